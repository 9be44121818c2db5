package setwright.logbook.row;

import java.util.OptionalDouble;

/**
 * What a change was to do and what it did.
 *
 * @param phase         in words; empty: the lap time
 * @param speed         class of corners in words; empty: all corners, or the lap time
 * @param unit          {@code s} for the lap time, {@code rad} for balance
 * @param predicted     before it was driven; empty where nothing could be told
 * @param predictedLow  lower end of the interval that holds it eight times in ten
 * @param measured      changed less unchanged
 * @param measuredLow   lower end of its 95 % interval
 * @param error         its standard error
 */
public record TriedEffectRow(
        long verdictId,
        String phase,
        String speed,
        String unit,
        OptionalDouble predicted,
        OptionalDouble predictedLow,
        OptionalDouble predictedHigh,
        double measured,
        double measuredLow,
        double measuredHigh,
        double error) {}
