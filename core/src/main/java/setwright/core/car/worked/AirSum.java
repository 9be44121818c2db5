package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.AirDensity;

/**
 * Density of the air.
 *
 * @param altitude     {@code A}, -2000..11000 m
 * @param temperature  {@code T}; the standard one of that altitude when empty
 * @param pressure     absolute, as a barometer on the spot shows, {@code p}; the standard one when empty
 * @param humidity     relative, {@code H}; dry when empty
 */
public record AirSum(Input altitude, Optional<Input> temperature, Optional<Input> pressure, Optional<Input> humidity) {

    /** Works it out. */
    public Calculation calculation() {
        Calculation.Steps steps = Calculation.named("air", "Density of the air")
                .from(altitude)
                .from(temperature)
                .from(pressure)
                .from(humidity);
        double kelvin = temperature.isPresent()
                ? temperature.get().si()
                : steps.result(
                                "T",
                                "standard temperature",
                                AirDensity.standardTemperatureK(altitude.si()),
                                Unit.CELSIUS,
                                "15 - 0.0065 * {A}")
                        .si();
        double pascal = pressure.isPresent()
                ? pressure.get().si()
                : steps.result(
                                "p",
                                "standard pressure",
                                AirDensity.standardPressurePa(altitude.si()),
                                Unit.HECTOPASCAL,
                                "1013.25 * (1 - 0.0065 * {A} / 288.15)^(9.80665 / (287.05287 * 0.0065))")
                        .si();
        double density = density(steps, pascal, kelvin);
        steps.result("q", "of the standard density at sea level", density / 1.225, Unit.PERCENT, "100 * {rho} / 1.225");
        if (pressure.isEmpty()) {
            steps.note("The day's weather moves the pressure by up to 3 %; --pressure takes a barometer's reading.");
        }
        return steps.source(
                "ISO 2533 standard atmosphere; ideal gas; Magnus formula of WMO No. 8 for moist air (constants from"
                        + " memory)");
    }

    private double density(Calculation.Steps steps, double pascal, double kelvin) {
        if (humidity.isEmpty()) {
            double dry = AirDensity.dry(pascal, kelvin);
            steps.result(
                    "rho",
                    "density, dry air",
                    dry,
                    Unit.KG_PER_CUBIC_METRE,
                    "100 * {p} / (287.05287 * ({T} + 273.15))");
            return dry;
        }
        double share = humidity.get().si();
        steps.result(
                "e",
                "pressure of the water vapour",
                share * AirDensity.saturationPa(kelvin),
                Unit.HECTOPASCAL,
                "{H} / 100 * 6.112 * exp(17.62 * {T} / (243.12 + {T}))");
        double moist = AirDensity.moist(pascal, kelvin, share);
        steps.result(
                "rho",
                "density",
                moist,
                Unit.KG_PER_CUBIC_METRE,
                "100 * (({p} - {e}) / 287.05287 + {e} / 461.52) / ({T} + 273.15)");
        return moist;
    }
}
