package setwright.core.chassis;

import java.util.List;
import java.util.Optional;
import setwright.core.numerics.SlopeInterval;

/**
 * Tyre pressures above the air's.
 *
 * @param wheels           in the order of {@link Wheel}; those without a reading are absent
 * @param frontLeftOver    front left less front right once warm, Pa; not a number where one is missing
 * @param rearLeftOver     rear left less rear right
 * @param frontOver        front axle less rear
 * @param laps             that count as warm: the later half of the judged ones
 */
public record TyrePressures(
        List<OfWheel> wheels,
        LapInterval frontLeftOver,
        LapInterval rearLeftOver,
        LapInterval frontOver,
        List<Integer> laps) {
    public TyrePressures {
        wheels = List.copyOf(wheels);
        laps = List.copyOf(laps);
    }

    /**
     * One tyre.
     *
     * @param wheel   which
     * @param startPa at the start of the recording: cold only if it begins before the car has run
     * @param warmPa  medians of the warm laps
     * @param drift   over the warm laps, Pa a lap
     * @param sheet   what the sheet says of this axle; empty where it does not
     */
    public record OfWheel(
            Wheel wheel, double startPa, LapInterval warmPa, SlopeInterval drift, Optional<Window> sheet) {

        /** Returns how much it has risen since the start, Pa. */
        public double risePa() {
            return warmPa.mean() - startPa;
        }

        /** Tells whether the warm pressure lies outside the range of the sheet, beyond chance. */
        public boolean outside() {
            return sheet.filter(window -> warmPa.above(window.maxPa()) || warmPa.below(window.minPa()))
                    .isPresent();
        }
    }

    /**
     * The item on the sheet.
     *
     * @param valuePa  as set, Pa
     * @param minPa    least allowed
     * @param maxPa    most allowed
     */
    public record Window(double valuePa, double minPa, double maxPa) {}
}
