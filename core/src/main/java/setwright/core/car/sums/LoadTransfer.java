package setwright.core.car.sums;

/**
 * Load that the whole car's acceleration moves from wheel to wheel: moments about the road, the car as one rigid body on a
 * flat road.
 *
 * <p><b>Source:</b> moment balance; T. D. Gillespie, <i>Fundamentals of Vehicle Dynamics</i>, SAE, 1992, ch. 1 (formula
 * from memory).
 */
public final class LoadTransfer {
    private LoadTransfer() {}

    /**
     * Returns the load moved from the front axle to the rear axle, N; negative when braking.
     *
     * @param massKg         of the car, kg
     * @param forwardMps2    acceleration, positive forward, m/s2
     * @param heightM        of the centre of gravity above the road, m
     * @param wheelbaseM     m, &gt; 0
     */
    public static double toRearAxle(double massKg, double forwardMps2, double heightM, double wheelbaseM) {
        return massKg * forwardMps2 * heightM / wheelbaseM;
    }

    /**
     * Returns the load moved from the left wheels to the right wheels of both axles together, N; negative in a right turn.
     *
     * @param massKg    of the car, kg
     * @param leftMps2  acceleration, positive to the left, m/s2
     * @param heightM   of the centre of gravity above the road, m
     * @param trackM    mean of both axles, m, &gt; 0
     */
    public static double toRightWheels(double massKg, double leftMps2, double heightM, double trackM) {
        return massKg * leftMps2 * heightM / trackM;
    }

    /**
     * Returns the load on the front axle at rest, N.
     *
     * @param massKg                 of the car, kg
     * @param rearAxleToCentreM      distance of the centre of gravity from the rear axle, m
     * @param wheelbaseM             m, &gt; 0
     */
    public static double staticFrontN(double massKg, double rearAxleToCentreM, double wheelbaseM) {
        return massKg * Gravity.STANDARD_MPS2 * rearAxleToCentreM / wheelbaseM;
    }
}
