package setwright.core.simulation.vehicle;

/**
 * How the grip of the tyres changes on the way: they warm up, then wear. Orders of size are common practice.
 *
 * @param coldLoss        share of the grip that is missing at the start, 0..1
 * @param warmUpM         distance in which two thirds of that have come, m
 * @param wearFrontPerM   share of the grip that the front loses per metre driven, 1/m
 * @param wearRearPerM    the same at the rear
 */
public record TyreCondition(double coldLoss, double warmUpM, double wearFrontPerM, double wearRearPerM) {

    /** Tyres that are warm and stay so. */
    public static final TyreCondition STEADY = new TyreCondition(0.0, 1.0, 0.0, 0.0);

    /** Returns tyres that are cool on the out lap and lose a thousandth of their grip in fifteen kilometres. */
    public static TyreCondition usual() {
        return new TyreCondition(0.06, 1200.0, 0.001 / 15.0e3, 0.001 / 15.0e3);
    }

    /** Returns grip over that of a warm, new tyre after a distance, m. */
    public double front(double distanceM) {
        return at(distanceM, wearFrontPerM);
    }

    /** Returns the same of the rear. */
    public double rear(double distanceM) {
        return at(distanceM, wearRearPerM);
    }

    private double at(double distanceM, double wear) {
        return Math.max(0.3, 1.0 - coldLoss * Math.exp(-distanceM / warmUpM) - wear * distanceM);
    }
}
