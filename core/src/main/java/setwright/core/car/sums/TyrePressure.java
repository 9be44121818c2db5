package setwright.core.car.sums;

/**
 * Cold and hot pressure of a tyre. Gauge pressures: above that of the air around. Temperatures are the filling's, K.
 *
 * <p><b>Valid for</b> a dry filling and a tyre that keeps its volume; a moist filling rises more. <b>Source:</b> ideal gas at
 * constant volume (Gay-Lussac), absolute pressures in proportion to absolute temperatures.
 *
 * @param ambientPa  absolute pressure of the air around, Pa, &gt; 0
 */
public record TyrePressure(double ambientPa) {
    public TyrePressure {
        Require.positive("ambient pressure", ambientPa, "Pa");
    }

    /** Returns the gauge pressure, Pa, at another temperature. */
    public double atTemperature(double gaugePa, double fromK, double toK) {
        return (gaugePa + ambientPa) * toK / fromK - ambientPa;
    }

    /** Returns the gauge pressure, Pa, that the same filling shows where the air around has another pressure. */
    public double atAmbient(double gaugePa, double otherAmbientPa) {
        return gaugePa + ambientPa - otherAmbientPa;
    }
}
