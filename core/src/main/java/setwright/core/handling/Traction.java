package setwright.core.handling;

import setwright.core.car.CarSheet;
import setwright.core.car.sums.Gravity;

/**
 * What the driven tyres can give along the road.
 *
 * @param share     static share of the weight on the driven wheels, 0..1
 * @param transfer  height of the centre of mass over the wheelbase; negative where accelerating unloads the driven axle
 */
record Traction(double share, double transfer) {
    /** All wheels drive. */
    static final Traction ALL = new Traction(1.0, 0.0);

    static Traction of(CarSheet sheet) {
        double transfer = sheet.centreOfMassHeightM() / sheet.wheelbaseM();
        return switch (sheet.drivenAxle()) {
            case ALL -> ALL;
            case FRONT -> new Traction(sheet.frontWeightShare(), -transfer);
            case REAR -> new Traction(1.0 - sheet.frontWeightShare(), transfer);
        };
    }

    /**
     * Returns the greatest acceleration, m/s²: the grip of the driven axle with the load that accelerating moves,
     * {@code mu g w / (1 - mu h / L)}. At most what all wheels give.
     *
     * @param limitMps2  what all wheels together give, m/s²
     */
    double mps2(double limitMps2) {
        double rest = 1.0 - limitMps2 / Gravity.STANDARD_MPS2 * transfer;
        return rest > share ? limitMps2 * share / rest : limitMps2;
    }
}
