package setwright.app.command;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import picocli.CommandLine.Option;

/** What people know of a run besides its setup. */
final class ConditionOptions {
    private static final int MOST_LAPS = 1000;
    private static final double COLDEST = -30.0;
    private static final double HOTTEST = 90.0;
    private static final double MOST_FUEL_KG = 300.0;

    @Option(names = "--tyre-age", paramLabel = "LAPS", description = "Laps that the tyres had done before.")
    private Optional<Integer> tyreAge = Optional.empty();

    @Option(
            names = "--track-temperature",
            paramLabel = "CELSIUS",
            description = "Temperature of the track, in degrees Celsius; else as recorded.")
    private Optional<Double> trackTemperature = Optional.empty();

    @Option(
            names = "--fuel",
            paramLabel = "KG",
            description = "Fuel when the run began, in kg; else that of the car sheet.")
    private Optional<Double> fuel = Optional.empty();

    /** Tells whether any was given. */
    boolean given() {
        return tyreAge.isPresent() || trackTemperature.isPresent() || fuel.isPresent();
    }

    OptionalInt tyreAgeLaps() {
        tyreAge.ifPresent(laps -> within("--tyre-age", laps, 0.0, MOST_LAPS, "laps"));
        return tyreAge.stream().mapToInt(Integer::intValue).findFirst();
    }

    OptionalDouble trackCelsius() {
        return within("--track-temperature", trackTemperature, COLDEST, HOTTEST, "degrees Celsius");
    }

    OptionalDouble fuelKg() {
        return within("--fuel", fuel, 0.0, MOST_FUEL_KG, "kg");
    }

    private static OptionalDouble within(
            String option, Optional<Double> value, double least, double most, String unit) {
        value.ifPresent(given -> within(option, given, least, most, unit));
        return value.stream().mapToDouble(Double::doubleValue).findFirst();
    }

    private static void within(String option, double given, double least, double most, String unit) {
        if (!(given >= least && given <= most)) {
            throw new BadOption(option + " is to be from " + (int) least + " to " + (int) most + " " + unit + ", got "
                    + given + ".");
        }
    }
}
