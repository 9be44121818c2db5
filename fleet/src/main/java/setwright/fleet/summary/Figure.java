package setwright.fleet.summary;

import java.util.OptionalDouble;

/**
 * A share or a mean with how sure it is.
 *
 * @param value   best estimate; empty without any occasion, or where nothing tells
 * @param low     lower end of its 95 % interval; empty where there are too few to tell
 * @param high    upper end of it
 * @param tooFew  whether there are too few to tell
 */
public record Figure(OptionalDouble value, OptionalDouble low, OptionalDouble high, boolean tooFew) {
    /** Nothing tells. */
    static Figure untold() {
        return new Figure(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), false);
    }

    static Figure tooFew(double value) {
        return new Figure(
                Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                true);
    }

    static Figure of(double value, double low, double high) {
        return new Figure(OptionalDouble.of(value), OptionalDouble.of(low), OptionalDouble.of(high), false);
    }
}
