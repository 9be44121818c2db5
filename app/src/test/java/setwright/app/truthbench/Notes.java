package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.scoreboard.Table;
import setwright.core.handling.Phase;
import setwright.core.simulation.truth.BalanceTable;
import setwright.core.simulation.truth.CornerPhases;

/** What is true of a case, to be read by a person who looks at it closely. */
final class Notes {
    private Notes() {}

    static String of(Driven driven, CaseTruth truth, Outcome outcome) {
        StringBuilder text = new StringBuilder();
        BenchCase drawn = driven.last();
        line(text, "case %s", drawn.name());
        line(text, "changes %s", drawn.changes());
        line(text, "driver %s", drawn.style());
        line(text, "laps with    %s", seconds(driven.recorded().lapsS()));
        line(text, "laps without %s", seconds(driven.without().lapsS()));
        line(text, "scatter %.2f %%", 100.0 * truth.driving().deviationShare());
        line(text, "price %s", truth.price());
        line(text, "events %d", driven.recorded().events().size());
        line(
                text,
                "true: %s, accepted %s %s",
                outcome.truthWords(),
                outcome.problem().map(found -> found.acceptPhases().toString()).orElse(""),
                outcome.problem().map(found -> found.acceptSpeeds().toString()).orElse(""));
        outcome.days().ifPresent(found -> line(text, "both days measured without error: %s", Outcome.words(found)));
        line(text, "trigger %s, corners say %s", drawn.trigger(), outcome.witnesses());
        line(text, "answer: %s, %s", outcome.answerWords(), outcome.verdict());
        text.append(table(truth).text());
        return text.toString();
    }

    private static Table table(CaseTruth truth) {
        List<List<String>> rows = new ArrayList<>();
        for (CornerPhases corner : truth.recorded().map().corners()) {
            List<String> row = new ArrayList<>(List.of(
                    corner.corner().number() + " " + corner.corner().direction(),
                    String.format(Locale.ROOT, "%.0f", 3.6 * corner.lowestMps())));
            for (Phase phase : Phase.values()) {
                int number = corner.corner().number();
                Optional<BalanceTable.Cell> with = truth.recorded().cell(phase, number);
                Optional<BalanceTable.Cell> without = truth.without().cell(phase, number);
                row.add(
                        with.isEmpty() || without.isEmpty()
                                ? "-"
                                : String.format(
                                        Locale.ROOT,
                                        "%+.2f %+.2f +-%.2f %.1fs",
                                        Math.toDegrees(with.get().balanceRad()),
                                        Math.toDegrees(with.get().balanceRad()
                                                - without.get().balanceRad()),
                                        Math.toDegrees(with.get().deviationRad()),
                                        with.get().timeS()));
            }
            rows.add(row);
        }
        return new Table(List.of("corner", "km/h", "braking", "entry", "mid", "exit"), rows);
    }

    private static String seconds(List<Double> laps) {
        return String.join(
                " ",
                laps.stream()
                        .map(lap -> String.format(Locale.ROOT, "%.2f", lap))
                        .toList());
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
