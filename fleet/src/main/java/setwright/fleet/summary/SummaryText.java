package setwright.fleet.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import setwright.fleet.summary.Summary.AtCorner;
import setwright.fleet.summary.Summary.AtDriver;
import setwright.fleet.summary.Summary.Change;
import setwright.fleet.summary.Summary.Problem;

/** Writes a summary for people. */
public final class SummaryText {
    /** More rows are for programs: JSON and the tables have all. */
    private static final int MOST_ROWS = 20;

    private SummaryText() {}

    /** Returns the text. */
    public static String write(Summary summary) {
        Summary.Recordings counts = summary.recordings();
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%d recordings: %d judged, %d without enough evidence, %d failed; %d drivers at %d circuits.%n",
                counts.all(),
                counts.judged(),
                counts.notEnoughEvidence(),
                counts.failed(),
                counts.drivers(),
                counts.circuits()));
        table(
                text,
                "What is there? Share of judged recordings; cost a lap where it shows.",
                List.of("problem", "of", "recordings", "drivers", "share", "cost"),
                summary.problems(),
                SummaryText::row);
        table(
                text,
                "In which corners? Cost: mean over all recordings of the circuit, a lap.",
                List.of("circuit", "corner", "problem", "recordings", "share", "cost"),
                summary.corners(),
                SummaryText::row);
        table(
                text,
                "Which drivers do it more often than is usual here (probability 0.95 or more)?",
                List.of("driver", "fault", "recordings", "share", "usual", "probability"),
                summary.drivers(),
                SummaryText::row);
        table(
                text,
                "Which changes helped? Successive recordings that differ in one item.",
                List.of("item", "", "tries", "drivers", "gone", "less", "helped", "lap time"),
                summary.changes(),
                SummaryText::row);
        text.append(String.format(
                Locale.ROOT,
                "  Between recordings with the same setup: %d pairs of %d drivers, gone %d of %d, less %d, better %s, lap time %s%n%n",
                summary.unchanged().pairs(),
                summary.unchanged().drivers(),
                summary.unchanged().gone(),
                summary.unchanged().told(),
                summary.unchanged().less(),
                share(summary.unchanged().better()),
                seconds(summary.unchanged().lapTimeS())));
        summary.doubts().forEach(doubt -> text.append(doubt).append(System.lineSeparator()));
        return text.toString();
    }

    private static List<String> row(Problem problem) {
        return List.of(
                problem.what(),
                problem.kind(),
                problem.recordings() + " of " + problem.of(),
                String.valueOf(problem.drivers()),
                share(problem.share()),
                problem.costS().isPresent()
                        ? String.format(Locale.ROOT, "%.2f s", problem.costS().getAsDouble())
                        : "not told");
    }

    private static List<String> row(AtCorner corner) {
        return List.of(
                corner.circuit(),
                String.valueOf(corner.corner()),
                corner.what(),
                corner.recordings() + " of " + corner.of(),
                share(corner.share()),
                seconds(corner.costS()));
    }

    private static List<String> row(AtDriver driver) {
        return List.of(
                driver.driver(),
                driver.what(),
                driver.recordings() + " of " + driver.of(),
                percent(driver.share()),
                percent(driver.usual()),
                String.format(Locale.ROOT, "%.3f", driver.probability()));
    }

    private static List<String> row(Change change) {
        return List.of(
                change.item(),
                change.direction(),
                String.valueOf(change.tries()),
                String.valueOf(change.drivers()),
                change.gone() + " of " + change.told(),
                String.valueOf(change.less()),
                share(change.helped()),
                seconds(change.lapTimeS()));
    }

    private static String share(Figure share) {
        return figure(share, SummaryText::percent);
    }

    private static String seconds(Figure seconds) {
        return figure(seconds, value -> String.format(Locale.ROOT, "%+.3f s", value));
    }

    private static String figure(Figure figure, Function<Double, String> words) {
        if (figure.value().isEmpty()) {
            return figure.tooFew() ? "too few" : "not told";
        }
        String interval = figure.tooFew()
                ? " (too few)"
                : " (" + words.apply(figure.low().orElseThrow()) + " to "
                        + words.apply(figure.high().orElseThrow()) + ")";
        return words.apply(figure.value().getAsDouble()) + interval;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100.0 * share);
    }

    private static <T> void table(
            StringBuilder text, String head, List<String> columns, List<T> rows, Function<T, List<String>> cells) {
        text.append(String.format("%n%s%n", head));
        if (rows.isEmpty()) {
            text.append(String.format("  none%n"));
            return;
        }
        List<List<String>> lines = new ArrayList<>(List.of(columns));
        rows.stream().limit(MOST_ROWS).map(cells).forEach(lines::add);
        for (List<String> line : lines) {
            StringBuilder padded = new StringBuilder(" ");
            for (int i = 0; i < line.size(); i++) {
                int column = i;
                int width = lines.stream()
                        .mapToInt(one -> one.get(column).length())
                        .max()
                        .orElse(0);
                padded.append(' ')
                        .append(line.get(i))
                        .append(" ".repeat(width - line.get(i).length() + 1));
            }
            text.append(padded.toString().stripTrailing()).append(System.lineSeparator());
        }
        if (rows.size() > MOST_ROWS) {
            text.append(String.format(Locale.ROOT, "  and %d more: --json%n", rows.size() - MOST_ROWS));
        }
    }
}
