package setwright.intake.map;

import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds the distance: it rises at the speed of the car. */
final class DistanceSearch {
    /** Wheel slip and lines taken differently from the one that was measured, as a log ratio. */
    private static final double TOLERANCE = 0.2;

    private DistanceSearch() {}

    static void run(Search search) {
        for (Candidate candidate : search.named(Quantity.LAP_DISTANCE)) {
            int column = candidate.column();
            double[] rate = rise(search, column);
            double[] ratio = Signals.combine(rate, search.speedMps, (d, v) -> v > 5.0 ? d / v : Double.NaN);
            double slope = Robust.median(ratio);
            Unit nearest = slope > 0.0
                    ? PullSearch.nearest(slope, Units.of(Dimension.LENGTH))
                    : Units.of(Dimension.LENGTH).get(0);
            double size = slope * nearest.factor();
            if (!(size > 0.0 && Math.abs(Math.log(size)) < TOLERANCE)) {
                search.remark(
                        "Column '%s' is named like a distance but does not rise with the speed; it is not used.",
                        search.header(column));
                search.claimed.add(column);
                continue;
            }
            Optional<Unit> declared = search.declaredUnit(column, Quantity.LAP_DISTANCE);
            String physics = Search.text("in %s it rises at %.3f times the speed", nearest, size);
            declared.filter(unit -> !unit.equals(nearest))
                    .ifPresent(unit -> search.remark(
                            "The header of '%s' says %s, but the data are in %s: %s.",
                            search.header(column), unit, nearest, physics));
            search.accept(Quantity.LAP_DISTANCE, column, nearest, 1, 0.0, Standing.CONFIRMED, physics);
            return;
        }
    }

    /** Rise per second, with the falls back to zero at the start line left out. */
    private static double[] rise(Search search, int column) {
        double[] raw = search.signals.raw(column);
        double[] unwrapped = new double[raw.length];
        double carry = 0.0;
        double last = Double.NaN;
        double span = search.signals.quantile(column, 1.0) - search.signals.quantile(column, 0.0);
        for (int i = 0; i < raw.length; i++) {
            if (!Double.isNaN(raw[i]) && !Double.isNaN(last) && raw[i] < last - 0.5 * span) {
                carry += last - raw[i];
            }
            last = Double.isNaN(raw[i]) ? last : raw[i];
            unwrapped[i] = raw[i] + carry;
        }
        return search.signals.derivative(search.signals.slow(unwrapped));
    }
}
