package setwright.core.car.aero;

/**
 * Downforce and drag of a car, linear in the inverse ride height about a reference.
 *
 * <p>An underbody's downforce grows as the gap to the ground shrinks, about with its inverse, until the flow stalls; how
 * much of an axle's downforce does so is its ground share. Nearer to the ground than {@code stall} times the reference height
 * it grows no more. Rake (the rear higher) opens the diffuser and sharpens the front (common practice).
 *
 * @param liftFrontM2      downforce area at the front axle at the reference, m², positive downward
 * @param liftRearM2       downforce area at the rear axle at the reference, m²
 * @param dragM2           drag area at the reference, m²
 * @param heightFrontM     reference front ride height, m
 * @param heightRearM      reference rear ride height, m
 * @param groundFront      ground share of the front, 0..1
 * @param groundRear       ground share of the rear, 0..1
 * @param rakeShift        share of the whole downforce that moves forward per relative rise of the rear, 0..1
 * @param airDensity       kg/m³
 */
public record AeroMap(
        double liftFrontM2,
        double liftRearM2,
        double dragM2,
        double heightFrontM,
        double heightRearM,
        double groundFront,
        double groundRear,
        double rakeShift,
        double airDensity) {
    private static final double STALL = 0.6;
    private static final double FARTHEST = 1.6;

    /** Returns the downforce at the front axle, N. */
    public double frontN(double speedMps, double riseFrontM, double riseRearM) {
        double rake = shift(riseRearM);
        return pressure(speedMps)
                * (liftFrontM2 * near(groundFront, heightFrontM, riseFrontM) + (liftFrontM2 + liftRearM2) * rake);
    }

    /** Returns the downforce at the rear axle, N. */
    public double rearN(double speedMps, double riseFrontM, double riseRearM) {
        double rake = shift(riseRearM);
        return pressure(speedMps)
                * (liftRearM2 * near(groundRear, heightRearM, riseRearM) - (liftFrontM2 + liftRearM2) * rake);
    }

    /** Returns the drag, N. */
    public double dragN(double speedMps) {
        return pressure(speedMps) * dragM2;
    }

    private double pressure(double speedMps) {
        return 0.5 * airDensity * speedMps * speedMps;
    }

    private double shift(double riseRearM) {
        return rakeShift * Math.max(-STALL, Math.min(STALL, riseRearM / heightRearM));
    }

    private static double near(double share, double height, double rise) {
        double relative = Math.max(STALL, Math.min(FARTHEST, (height + rise) / height));
        return 1.0 + share * (1.0 / relative - 1.0);
    }
}
