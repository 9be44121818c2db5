package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;

/** A score as tables. */
final class Tables {
    private static final List<Measure> SUMMARY = List.of(
            Measure.LAPS,
            Measure.CHANNELS,
            Measure.CORNERS,
            Measure.DRIVING,
            Measure.VERDICT,
            Measure.TOP_PROBLEM,
            Measure.TRIGGER,
            Measure.CORNERS_NAMED,
            Measure.CORNERS_RIGHT);

    private static final List<String> SUMMARY_HEADERS = List.of(
            "case",
            "laps",
            "columns",
            "corners",
            "driving",
            "verdict",
            "top problem",
            "trigger",
            "affected named",
            "named affected",
            "false alarms");

    private Tables() {}

    /** Truth beside answer for one stint. */
    static Table details(Score.OfStint stint) {
        return new Table(
                List.of("", "right", "truth", "answer"),
                stint.rows().stream()
                        .map(row -> List.of(row.what(), row.right(), row.truth(), row.answer()))
                        .toList());
    }

    /** One row per stint. */
    static Table summary(Score score) {
        List<List<String>> rows = new ArrayList<>();
        for (Score.OfStint stint : score.stints()) {
            List<String> row = new ArrayList<>(List.of(stint.run().name()));
            SUMMARY.forEach(measure -> row.add(words(stint.count(measure))));
            row.add(Integer.toString(stint.count(Measure.FALSE_PROBLEMS).hit()
                    + stint.count(Measure.FALSE_CHANGES).hit()));
            rows.add(row);
        }
        return new Table(SUMMARY_HEADERS, rows);
    }

    private static String words(Count count) {
        return count.of() == 0 ? "-" : count.hit() + "/" + count.of();
    }

    static Table totals(Score score) {
        return new Table(
                List.of("total", "count", "better"),
                score.totals().entrySet().stream()
                        .map(entry -> List.of(
                                entry.getKey().words(),
                                entry.getValue().toString(),
                                entry.getKey().aim() == Measure.Aim.FEW ? "fewer" : "more"))
                        .toList());
    }

    /** Phase by speed class for every stint, deg. */
    static Table balance(Score score) {
        List<String> headers = new ArrayList<>(List.of("case", "phase"));
        for (String speed : BalanceComparison.SPEED_CLASSES) {
            headers.add(speed + ": truth");
            headers.add("answer");
        }
        List<List<String>> rows = new ArrayList<>();
        for (Score.OfStint stint : score.stints()) {
            for (List<String> cells : stint.balance().cells()) {
                List<String> row = new ArrayList<>(List.of(stint.balance().name()));
                row.addAll(cells);
                rows.add(row);
            }
        }
        return new Table(headers, rows);
    }

    /** Correlation, offset and spread of measured balance, deg: by stint for the cells, over all stints for each view. */
    static Table agreement(Score score) {
        List<List<String>> rows = new ArrayList<>();
        for (BalanceComparison.View view : BalanceComparison.View.values()) {
            List<Agreement.Pair> all = new ArrayList<>();
            for (Score.OfStint stint : score.stints()) {
                List<Agreement.Pair> pairs = stint.balance().pairs().get(view);
                all.addAll(pairs);
                if (!pairs.isEmpty()) {
                    rows.add(row(view, stint.balance().name(), pairs));
                }
            }
            rows.add(row(view, "all", all));
        }
        return new Table(List.of("balance", "case", "pairs", "correlation", "mean error", "rms error"), rows);
    }

    private static List<String> row(BalanceComparison.View view, String name, List<Agreement.Pair> pairs) {
        List<String> row = new ArrayList<>(List.of(view.words(), name));
        row.addAll(Agreement.of(pairs).cells());
        return row;
    }
}
