package setwright.core.car;

/*
 * Design note. "Understeer" and "oversteer" need something to be measured against. The slip angle difference of a good
 * car is not zero: its axles carry different tyres and loads, and on the throttle or the brake one axle works harder than
 * the other. The reference here is the car of the same dimensions whose axles reach their peaks together:
 *
 *   - each axle's lateral force follows from measured lateral and yaw acceleration (no tyre data needed);
 *   - its capacity follows from the load (with longitudinal transfer and downforce shared like the weight), less what
 *     driving or ideally shared braking uses up, by the friction circle;
 *   - the slip share then follows from the tyre curve; the slip angle, from the axle's peak slip angle.
 *
 * The difference of the two peak slip angles is what the car shows at low lateral acceleration (its linear understeer
 * gradient), where bars, wings and differentials hardly act; it rises toward the limit as the tyre curve says. What unlike
 * work of the two axles adds is kept linear on purpose: near the peak a small error of grip would turn into degrees of slip.
 * So the reference is multiplicative in a measured difference and stays well-conditioned near the limit.
 */

/**
 * Balance angle that a car of these dimensions shows when both axles reach their limits together.
 *
 * @param sheet               dimensions and driven axle
 * @param grip                the limit that the laps show
 * @param peakSlipRad         mean slip angle of the axles at their peaks, rad
 * @param slipDifferenceRad   slip angle at the peak, front minus rear, rad; carries the linear understeer gradient
 */
public record BalancedCar(CarSheet sheet, GripLimit grip, double peakSlipRad, double slipDifferenceRad) {

    /** Racing tyres peak at 6 to 9 degrees (common practice); a value in the middle. */
    public static final double USUAL_PEAK_SLIP_RAD = Math.toRadians(7.0);

    /** Beyond this share of the peak force the slip angle is no longer a function of the force worth using. */
    private static final double HIGHEST_USE = 0.97;

    /** Least share of an axle's grip left for cornering when driving or braking uses the rest. */
    private static final double LEAST_LATERAL_SHARE = 0.3;

    /**
     * What each axle does at one moment.
     *
     * @param frontUse  lateral force of the front axle over what is left for it, 0..0.97
     * @param rearUse   of the rear axle
     */
    public record AxleUse(double frontUse, double rearUse) {}

    /**
     * Returns how hard each axle of the balanced car works.
     *
     * @param speedMps    m/s
     * @param inwardMps2  lateral acceleration toward the inside of the turn, m/s², &gt;= 0
     * @param forwardMps2 longitudinal acceleration, m/s²; moves load between the axles
     * @param tyreMps2    the part of it that brakes or engine put through the tyres, m/s²; drag of air and of the slipping
     *                    tyres is not among it
     * @param yawAcceleration into the turn, rad/s²
     */
    public AxleUse use(
            double speedMps, double inwardMps2, double forwardMps2, double tyreMps2, double yawAcceleration) {
        double wheelbase = sheet.wheelbaseM();
        double toFront = sheet.frontAxleToCentreM();
        double toRear = sheet.rearAxleToCentreM();
        double load = grip.loadPerMass(speedMps);
        double transfer = sheet.centreOfMassHeightM() * forwardMps2;
        double frontGrip = grip.friction() * Math.max(toRear * load - transfer, 0.05 * wheelbase * load) / wheelbase;
        double rearGrip = grip.friction() * Math.max(toFront * load + transfer, 0.05 * wheelbase * load) / wheelbase;
        double frontDrive = driveShareFront();
        double along = Math.abs(tyreMps2);
        double frontAlong = tyreMps2 < 0.0 ? along * frontGrip / (frontGrip + rearGrip) : along * frontDrive;
        double rearAlong = along - frontAlong;
        // yaw inertia m a b: the radius of gyration of a car with little overhang (common practice)
        double turning = toFront * toRear * yawAcceleration;
        double front = Math.max(toRear * inwardMps2 + turning, 0.0) / wheelbase;
        double rear = Math.max(toFront * inwardMps2 - turning, 0.0) / wheelbase;
        return new AxleUse(
                Math.min(front / left(frontGrip, frontAlong), HIGHEST_USE),
                Math.min(rear / left(rearGrip, rearAlong), HIGHEST_USE));
    }

    /** Returns the balance angle of the balanced car, front slip minus rear slip, rad; arguments as in {@link #use}. */
    public double balance(
            double speedMps, double inwardMps2, double forwardMps2, double tyreMps2, double yawAcceleration) {
        AxleUse use = use(speedMps, inwardMps2, forwardMps2, tyreMps2, yawAcceleration);
        return commonPart(use) + slipDifferenceRad * differencePart(use);
    }

    /** Returns the balance that equal peak slip angles would give, rad. */
    double commonPart(AxleUse use) {
        return peakSlipRad * TyreCurve.COMPLIANCE * (use.frontUse() - use.rearUse());
    }

    /** Returns the factor of the difference of the peak slip angles. */
    double differencePart(AxleUse use) {
        return 0.5 * (TyreCurve.slipShare(use.frontUse()) + TyreCurve.slipShare(use.rearUse()));
    }

    private double driveShareFront() {
        return switch (sheet.drivenAxle()) {
            case FRONT -> 1.0;
            case REAR -> 0.0;
            case ALL -> 0.5;
        };
    }

    private static double left(double axleGrip, double along) {
        double used = Math.min(along / axleGrip, 1.0);
        return axleGrip * Math.max(Math.sqrt(1.0 - used * used), LEAST_LATERAL_SHARE);
    }
}
