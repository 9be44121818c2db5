package setwright.core.trial;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is known of a run besides its setup.
 *
 * @param fuelStartKg        fuel when it began, kg
 * @param tyreAgeLaps        laps that its tyres had done before
 * @param trackTemperatureC  of the track, degrees Celsius
 */
public record RunConditions(OptionalDouble fuelStartKg, OptionalInt tyreAgeLaps, OptionalDouble trackTemperatureC) {
    /** Returns the conditions of a run of which nothing is known. */
    public static RunConditions unknown() {
        return new RunConditions(OptionalDouble.empty(), OptionalInt.empty(), OptionalDouble.empty());
    }
}
