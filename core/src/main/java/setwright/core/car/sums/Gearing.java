package setwright.core.car.sums;

/**
 * Road speed and engine speed, no slip at the tyre. Engine speeds in rad/s, road speeds in m/s.
 *
 * <p><b>Source:</b> rolling without slip, {@code v = omega r / (i_gear i_final)}.
 *
 * @param finalDrive   ratio, &gt; 0
 * @param tyreRadiusM  rolling radius, m, &gt; 0
 */
public record Gearing(double finalDrive, double tyreRadiusM) {
    public Gearing {
        Require.positive("final drive", finalDrive, "");
        Require.positive("tyre radius", tyreRadiusM, "m");
    }

    /** Returns the road speed in a gear. */
    public double speedMps(double engineRadPerS, double gearRatio) {
        return engineRadPerS * tyreRadiusM / (gearRatio * finalDrive);
    }

    /** Returns the engine speed in a gear. */
    public double engineRadPerS(double speedMps, double gearRatio) {
        return speedMps * gearRatio * finalDrive / tyreRadiusM;
    }

    /** Returns the engine speed right after a shift that keeps the road speed. */
    public static double afterShiftRadPerS(double engineRadPerS, double fromRatio, double toRatio) {
        return engineRadPerS * toRatio / fromRatio;
    }

    /** Returns the final drive at which the engine turns this fast at a road speed in a gear. */
    public static double finalDriveFor(double engineRadPerS, double speedMps, double gearRatio, double tyreRadiusM) {
        return engineRadPerS * tyreRadiusM / (gearRatio * speedMps);
    }
}
