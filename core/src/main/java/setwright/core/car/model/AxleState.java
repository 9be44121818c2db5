package setwright.core.car.model;

/**
 * One axle at a moment: two tyres on one hub angle, each with the load, longitudinal force and toe of its own; mutable
 * workspace of {@link Cornering}.
 */
final class AxleState {
    private static final double SMALLEST_LEFT = 0.15;
    private static final int NEWTON_STEPS = 2;

    double innerPeak;
    double outerPeak;
    double innerAlongPeak;
    double outerAlongPeak;
    private double innerSlip;
    private double outerSlip;
    private MountedTyre tyre;
    private double toe;

    AxleState(MountedTyre tyre, double toe) {
        this.tyre = tyre;
        this.toe = toe;
    }

    /** Takes the loads of the inner and the outer wheel, N. */
    void load(double innerN, double outerN) {
        double inner = Math.max(innerN, 0.0);
        double innerBent = tyre.bent(inner);
        double outerBent = tyre.bent(outerN);
        innerPeak = tyre.lateralPeak(inner, innerBent);
        outerPeak = tyre.lateralPeak(outerN, outerBent);
        innerAlongPeak = tyre.alongPeak(inner, innerBent);
        outerAlongPeak = tyre.alongPeak(outerN, outerBent);
        innerSlip = tyre.peakSlip(inner);
        outerSlip = tyre.peakSlip(outerN);
    }

    double lateralPeak() {
        return innerPeak + outerPeak;
    }

    double alongPeak() {
        return innerAlongPeak + outerAlongPeak;
    }

    /**
     * Returns the slip angle of the axle that gives a lateral force, rad; grows without bound, but steadily, when the tyres
     * cannot give it.
     *
     * @param forceN      toward the inside, N
     * @param innerAlong  longitudinal force of the inner wheel, N
     * @param outerAlong  of the outer wheel, N
     */
    double slip(double forceN, double innerAlong, double outerAlong) {
        double inner = innerPeak * left(innerAlong, innerAlongPeak);
        double outer = outerPeak * left(outerAlong, outerAlongPeak);
        double most = inner + outer;
        if (most <= 0.0) {
            return outerSlip;
        }
        double share = forceN / most;
        double size = Math.abs(share);
        double over = Math.max(size - MountedTyre.HIGHEST_SHARE, 0.0);
        double aim = Math.copySign(Math.min(size, MountedTyre.HIGHEST_SHARE), share) * most;
        double middle = (inner * innerSlip + outer * outerSlip) / most;
        double angle = Math.copySign(tyre.inverse(Math.min(size, MountedTyre.HIGHEST_SHARE)), share) * middle
                - toe * (outer - inner) / most;
        double slope = most / middle;
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double x = (angle - toe) / innerSlip;
            double y = (angle + toe) / outerSlip;
            double force = inner * tyre.share(x) + outer * tyre.share(y);
            // never flatter than near the peak, so that a step cannot leave the curve
            slope = Math.max(
                    inner * tyre.slope(x) / innerSlip + outer * tyre.slope(y) / outerSlip, 0.25 * most / middle);
            angle += (aim - force) / slope;
        }
        return angle + Math.copySign(over * most / slope, share);
    }

    /** Share of the lateral force that longitudinal force leaves: the friction ellipse. */
    private static double left(double along, double peak) {
        double used = peak > 0.0 ? along / peak : 1.0;
        double square = 1.0 - used * used;
        return square > SMALLEST_LEFT * SMALLEST_LEFT ? Math.sqrt(square) : SMALLEST_LEFT;
    }
}
