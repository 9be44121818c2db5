package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import setwright.app.scoreboard.Agreement;
import setwright.app.scoreboard.Table;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.numerics.Robust;

/** Figures that the constants of the judgement can be set by: measured beside true balance, by phase and speed class. */
final class Calibration {
    private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

    private Calibration() {}

    /** The excess that steady drivers show in balanced cars, which a healthy level has to lie above; deg, by corner. */
    static Table healthy(List<Outcome> outcomes) {
        return spread(
                outcomes.stream().filter(Outcome::nothingToFind).toList(),
                "excess in balanced cars",
                BalancePair::excess);
    }

    /** The error of the measured balance angle over all cars, deg, by corner. */
    static Table angleError(List<Outcome> outcomes) {
        return spread(outcomes, "measured less true balance", pair -> pair.measured() - pair.truth());
    }

    /** The true difference that faults make, deg, by corner. */
    static Table faults(List<Outcome> outcomes) {
        return spread(
                outcomes.stream()
                        .filter(outcome -> outcome.wanted().isPresent())
                        .toList(),
                "size of the true difference, faulty cars",
                pair -> Math.abs(pair.difference()));
    }

    private static Table spread(List<Outcome> outcomes, String what, ToDoubleFunction<BalancePair> value) {
        List<String> headers = new ArrayList<>(List.of(what, "corners"));
        for (double share : SHARES) {
            headers.add(Math.round(100.0 * share) + " %");
        }
        List<List<String>> rows = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            for (SpeedClass speed : SpeedClass.values()) {
                double[] values = pairs(outcomes, pair -> pair.phase() == phase && pair.speed() == speed).stream()
                        .mapToDouble(value)
                        .toArray();
                if (values.length > 0) {
                    List<String> row = new ArrayList<>(
                            List.of(phase.words() + " " + speed.words(), Integer.toString(values.length)));
                    Arrays.stream(SHARES).forEach(share -> row.add(degrees(Robust.quantile(values, share))));
                    rows.add(row);
                }
            }
        }
        return new Table(headers, rows);
    }

    /** How measured angles follow the true ones, by phase. */
    static Table agreement(List<Outcome> outcomes) {
        List<List<String>> rows = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            List<BalancePair> pairs = pairs(outcomes, pair -> pair.phase() == phase);
            rows.add(row(
                    phase.words() + ": angle against true angle", pairs, BalancePair::truth, BalancePair::measured));
            rows.add(
                    row(phase.words() + ": excess against true angle", pairs, BalancePair::truth, BalancePair::excess));
            List<BalancePair> faulty = pairs(
                    outcomes.stream()
                            .filter(outcome -> outcome.problem().isPresent())
                            .toList(),
                    pair -> pair.phase() == phase && Double.isFinite(pair.difference()));
            rows.add(row(
                    phase.words() + ": excess against difference to the balanced car",
                    faulty,
                    BalancePair::difference,
                    BalancePair::excess));
        }
        return new Table(List.of("balance", "corners", "correlation", "mean error", "rms error"), rows);
    }

    private static List<String> row(
            String name,
            List<BalancePair> pairs,
            ToDoubleFunction<BalancePair> truth,
            ToDoubleFunction<BalancePair> answer) {
        Agreement agreement = Agreement.of(pairs.stream()
                .map(pair -> new Agreement.Pair(
                        Math.toDegrees(truth.applyAsDouble(pair)), Math.toDegrees(answer.applyAsDouble(pair))))
                .toList());
        return List.of(
                name,
                Integer.toString(agreement.count()),
                figure(agreement.correlation()),
                figure(agreement.offset()),
                figure(agreement.rms()));
    }

    private static List<BalancePair> pairs(List<Outcome> outcomes, Predicate<BalancePair> wanted) {
        return outcomes.stream()
                .filter(outcome -> outcome.driving().consistent())
                .flatMap(outcome -> outcome.pairs().stream())
                .filter(wanted)
                .toList();
    }

    private static String degrees(double rad) {
        return figure(Math.toDegrees(rad));
    }

    private static String figure(double value) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%+.2f", value);
    }
}
