package setwright.core.car.sums;

/** When the inner wheels leave the road: the car as one rigid body. <b>Source:</b> moments about the outer wheels. */
public final class Rollover {
    private Rollover() {}

    /** Returns the lateral acceleration, m/s2, at which the inner wheels carry nothing. */
    public static double thresholdMps2(double trackM, double heightM) {
        return Gravity.STANDARD_MPS2 * trackM / (2.0 * heightM);
    }
}
