package setwright.intake.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.numerics.Lag;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds throttle and brake: the car gains speed with the one and loses it with the other; notices pedals that count down. */
final class PedalSearch {
    /** A pedal column without words must act clearly. */
    private static final double NAMELESS_CORRELATION = 0.6;
    /** Below this a pedal's effect cannot be told from chance and hills. */
    private static final double TELLING_CORRELATION = 0.3;

    private static final Unit SHARE = Units.get(Dimension.SHARE, "0-1");
    private static final Unit PERCENT = Units.get(Dimension.SHARE, "%");

    private PedalSearch() {}

    static void run(Search search) {
        find(search, Quantity.BRAKE, -1);
        find(search, Quantity.THROTTLE, 1);
    }

    private static void find(Search search, Quantity pedal, int effect) {
        List<Candidate> candidates = new ArrayList<>(search.named(pedal));
        boolean byWords = !candidates.isEmpty();
        if (!byWords && pedal == Quantity.BRAKE && BrakePressureSearch.found(search)) {
            return;
        }
        if (!byWords) {
            candidates.addAll(search.nameless());
        }
        Optional<Candidate> best = Optional.empty();
        double bestScore = 0.0;
        for (Candidate candidate : candidates) {
            double acts = effect * acts(search, candidate.column());
            boolean plausible = byWords || (acts > NAMELESS_CORRELATION && looksLikePedal(search, candidate.column()));
            double score = 2.0 * candidate.wordScore() + Math.abs(acts);
            if (plausible && score > bestScore) {
                best = Optional.of(candidate);
                bestScore = score;
            }
        }
        best.ifPresent(candidate -> accept(search, pedal, effect, candidate));
    }

    private static double acts(Search search, int column) {
        return Lag.correlation(search.signals.column(column), search.speedRise);
    }

    /** A pedal rests at one end of its range for much of a lap. */
    private static boolean looksLikePedal(Search search, int column) {
        double low = search.signals.quantile(column, 0.01);
        double high = search.signals.quantile(column, 0.99);
        double span = high - low;
        double lower = search.signals.quantile(column, 0.2) - low;
        double upper = high - search.signals.quantile(column, 0.8);
        return span > 0.0 && Math.min(lower, upper) < 0.05 * span;
    }

    private static void accept(Search search, Quantity pedal, int effect, Candidate candidate) {
        int column = candidate.column();
        double acts = effect * acts(search, column);
        boolean inverted = acts < -TELLING_CORRELATION;
        double high = search.signals.quantile(column, 0.999);
        Unit unit = unit(search, pedal, column, high);
        double full = unit.equals(PERCENT) ? 100.0 : unit.equals(SHARE) ? 1.0 : high;
        String physics = Search.text(
                "it reaches %.4g and correlates %.2f with the rate of change of the speed", high, effect * acts);
        if (inverted) {
            search.remark(
                    "Column '%s' counts down when the pedal goes down; it is turned over.", search.header(column));
        }
        search.accept(
                pedal,
                column,
                unit,
                inverted ? -1 : 1,
                inverted ? full : 0.0,
                Math.abs(acts) > TELLING_CORRELATION ? Standing.CONFIRMED : Standing.SILENT,
                physics);
    }

    private static Unit unit(Search search, Quantity pedal, int column, double high) {
        Optional<Unit> declared = search.unit(column, pedal);
        Unit byRange = byRange(search, pedal, high);
        if (declared.isEmpty()) {
            if (pedal == Quantity.BRAKE && byRange.dimension() == Dimension.PRESSURE) {
                search.remark(
                        "The unit of '%s' could not be told; it reaches %.4g and is taken as pressure in %s.",
                        search.header(column), high, byRange);
            }
            return byRange;
        }
        Unit unit = declared.get();
        boolean shareTooLarge = unit.dimension() == Dimension.SHARE && unit.toSi(high) > 1.5;
        boolean shareTooSmall = unit.equals(PERCENT) && high <= 1.2;
        if (shareTooLarge || shareTooSmall) {
            search.remark(
                    "The header of '%s' says %s, but it reaches %.4g; %s is taken.",
                    search.header(column), unit, high, byRange);
            return byRange;
        }
        return unit;
    }

    private static Unit byRange(Search search, Quantity pedal, double high) {
        if (high <= 1.5) {
            return SHARE;
        }
        if (pedal == Quantity.THROTTLE || (high <= 101.0 && high > 99.0)) {
            return high <= 150.0 ? PERCENT : Units.shareOf(high);
        }
        Optional<Double> most = search.car
                .map(CarSheet::brakePressureMaxPa)
                .filter(java.util.OptionalDouble::isPresent)
                .map(java.util.OptionalDouble::getAsDouble);
        double expected = most.orElse(80.0e5);
        List<Unit> units = new ArrayList<>(Units.of(Dimension.PRESSURE));
        return PullSearch.nearest(high / (0.7 * expected), units);
    }
}
