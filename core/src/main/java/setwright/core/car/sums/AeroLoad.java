package setwright.core.car.sums;

/**
 * Forces of the air at one speed.
 *
 * <p><b>Source:</b> definition of the coefficients, {@code F = rho/2 v^2 C A}.
 *
 * @param densityKgM3     of the air, kg/m3, &gt; 0
 * @param dragAreaM2      drag coefficient times area, m2, &gt;= 0
 * @param frontAreaM2     downforce coefficient of the front axle times area, m2; negative lifts
 * @param rearAreaM2      downforce coefficient of the rear axle times area, m2; negative lifts
 */
public record AeroLoad(double densityKgM3, double dragAreaM2, double frontAreaM2, double rearAreaM2) {
    public AeroLoad {
        Require.positive("air density", densityKgM3, "kg/m3");
        Require.notNegative("drag area", dragAreaM2, "m2");
        Require.finite("front downforce area", frontAreaM2, "m2");
        Require.finite("rear downforce area", rearAreaM2, "m2");
    }

    /** Returns the dynamic pressure, Pa. */
    public static double dynamicPressurePa(double densityKgM3, double speedMps) {
        return 0.5 * densityKgM3 * speedMps * speedMps;
    }

    /** Returns the drag, N. */
    public double dragN(double speedMps) {
        return dynamicPressurePa(densityKgM3, speedMps) * dragAreaM2;
    }

    /** Returns the downforce on the front axle, N. */
    public double frontN(double speedMps) {
        return dynamicPressurePa(densityKgM3, speedMps) * frontAreaM2;
    }

    /** Returns the downforce on the rear axle, N. */
    public double rearN(double speedMps) {
        return dynamicPressurePa(densityKgM3, speedMps) * rearAreaM2;
    }

    /** Returns the front axle's share of the downforce; NaN when there is none. */
    public double frontShare() {
        return frontAreaM2 / (frontAreaM2 + rearAreaM2);
    }

    /** Returns the load, N, that drag at a height (m) moves from the front to the rear axle, where the coefficients leave it out. */
    public double dragTransferN(double speedMps, double dragHeightM, double wheelbaseM) {
        return dragN(speedMps) * dragHeightM / wheelbaseM;
    }
}
