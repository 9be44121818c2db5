package setwright.core.car.sums;

/**
 * Pressure, temperature and density of air.
 *
 * <p><b>Source:</b> ISO 2533:1975 standard atmosphere, troposphere (constants from memory: 101 325 Pa, 288.15 K, 6.5 K/km,
 * R 287.05287 J/(kg K)); ideal gas; vapour pressure of water by the Magnus form in WMO No. 8 (constants from memory).
 */
public final class AirDensity {
    /** J/(kg K), dry air. */
    public static final double GAS_CONSTANT = 287.05287;
    /** Pa, at altitude 0. */
    public static final double SEA_LEVEL_PA = 101_325.0;
    /** K, at altitude 0. */
    public static final double SEA_LEVEL_K = 288.15;
    /** 0 degrees Celsius in K, exact. */
    public static final double FREEZING_K = 273.15;

    /** Temperature lost per metre in the troposphere, K/m. */
    private static final double LAPSE = 0.0065;
    /** J/(kg K), water vapour (value from memory). */
    private static final double VAPOUR_GAS_CONSTANT = 461.52;

    private AirDensity() {}

    /** Returns the standard temperature, K, at a geopotential altitude of -2000..11000 m. */
    public static double standardTemperatureK(double altitudeM) {
        return SEA_LEVEL_K - LAPSE * altitudeM;
    }

    /** Returns the standard pressure, Pa, at a geopotential altitude of -2000..11000 m. */
    public static double standardPressurePa(double altitudeM) {
        double exponent = Gravity.STANDARD_MPS2 / (GAS_CONSTANT * LAPSE);
        return SEA_LEVEL_PA * Math.pow(standardTemperatureK(altitudeM) / SEA_LEVEL_K, exponent);
    }

    /** Returns the standard density, kg/m3, at a geopotential altitude of -2000..11000 m. */
    public static double standard(double altitudeM) {
        return dry(standardPressurePa(altitudeM), standardTemperatureK(altitudeM));
    }

    /** Returns the density of dry air, kg/m3, at an absolute pressure (Pa) and temperature (K). */
    public static double dry(double pressurePa, double temperatureK) {
        return pressurePa / (GAS_CONSTANT * temperatureK);
    }

    /**
     * Returns the density of moist air, kg/m3.
     *
     * @param pressurePa    absolute, Pa
     * @param temperatureK  228..333 K, where the vapour formula holds
     * @param humidity      relative humidity, 0..1
     */
    public static double moist(double pressurePa, double temperatureK, double humidity) {
        double vapour = humidity * saturationPa(temperatureK);
        return dry(pressurePa - vapour, temperatureK) + vapour / (VAPOUR_GAS_CONSTANT * temperatureK);
    }

    /** Returns the saturation pressure of water vapour over water, Pa. */
    public static double saturationPa(double temperatureK) {
        double celsius = temperatureK - FREEZING_K;
        return 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }
}
