package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.app.scoreboard.Count;
import setwright.app.scoreboard.Table;

/** Whether probabilities mean what they say: a reliability diagram as a table, one row for each range of what is stated. */
final class Reliability {
    private final List<Stated> answers;
    private final double[] edges;

    /**
     * Answers by what was stated for them.
     *
     * @param answers  all of them
     * @param edges    of the ranges, ascending, from 0 to 1; a range holds its upper edge
     */
    Reliability(List<Stated> answers, double... edges) {
        this.answers = List.copyOf(answers);
        this.edges = edges.clone();
    }

    Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i + 1 < edges.length; i++) {
            List<Stated> here = within(i);
            if (!here.isEmpty()) {
                rows.add(row(String.format(Locale.ROOT, "%.2f to %.2f", edges[i], edges[i + 1]), here));
            }
        }
        if (!answers.isEmpty()) {
            rows.add(row("all", answers));
        }
        return new Table(
                List.of("stated", "mean stated %", "right", "right %", "95 % interval", "stated (-) and right (#)"),
                rows);
    }

    /** Expected calibration error: mean distance between what is stated and what is right, over the ranges. */
    double error() {
        double sum = 0.0;
        for (int i = 0; i + 1 < edges.length; i++) {
            List<Stated> here = within(i);
            if (!here.isEmpty()) {
                sum += here.size() * Math.abs(stated(here) - right(here).share()) / answers.size();
            }
        }
        return sum;
    }

    private static List<String> row(String name, List<Stated> here) {
        Count count = right(here);
        double stated = stated(here);
        return List.of(
                name,
                String.format(Locale.ROOT, "%.0f", 100.0 * stated),
                count.toString(),
                String.format(Locale.ROOT, "%.0f", 100.0 * count.share()),
                Interval.of(count).toString(),
                "`" + bar('-', stated) + "` `" + bar('#', count.share()) + "`");
    }

    private static String bar(char mark, double share) {
        return String.valueOf(mark).repeat((int) Math.round(20.0 * share));
    }

    private List<Stated> within(int range) {
        return answers.stream()
                .filter(each -> each.probability() > edges[range] && each.probability() <= edges[range + 1])
                .toList();
    }

    private static double stated(List<Stated> here) {
        return here.stream().mapToDouble(Stated::probability).average().orElse(0.0);
    }

    private static Count right(List<Stated> here) {
        return new Count((int) here.stream().filter(Stated::right).count(), here.size());
    }
}
