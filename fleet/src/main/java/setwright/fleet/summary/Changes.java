package setwright.fleet.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.sql.Row;
import setwright.fleet.summary.Summary.Change;
import setwright.fleet.summary.Summary.Unchanged;

/*
 * Design note. Nobody planned these trials: what a driver changed between two recordings may have been changed because of the first one, and
 * he gets better from run to run, as the track does. Nor is a problem that was found once as large the next time, changed or not: the
 * largest of several that chance moves is the one that chance made large. So what is seen is told as seen, beside what became of problems and
 * lap times between two recordings with the same setup; recordings whose sheet tells no setup say neither. A problem counts as gone only where the second recording was judged:
 * not finding it for want of evidence says nothing.
 */

/** Which changes helped. */
final class Changes {
    private static final String PAIRS = """
            SELECT circuit, driver, car, recording AS after, status AS status_after, `median lap (s)` AS lap_after,
                   lag(recording) OVER turn AS before, lag(`median lap (s)`) OVER turn AS lap_before
            FROM recordings
            WHERE status <> 'failed' AND driver IS NOT NULL AND circuit IS NOT NULL
            WINDOW turn AS (PARTITION BY circuit, driver, car ORDER BY date, session, recording)
            """;

    private static final String DIFFERENCES = """
            SELECT before, after, item, max(value_before) AS value_before, max(value_after) AS value_after,
                   max(word_before) AS word_before, max(word_after) AS word_after
            FROM (SELECT p.before, p.after, s.item, s.`value (unit beside it)` AS value_before, NULL AS value_after,
                         s.word AS word_before, NULL AS word_after
                  FROM pairs p JOIN setups s ON s.recording = p.before
                  UNION ALL
                  SELECT p.before, p.after, s.item, NULL, s.`value (unit beside it)`, NULL, s.word
                  FROM pairs p JOIN setups s ON s.recording = p.after)
            GROUP BY before, after, item
            """;

    private static final String TRIES = """
            SELECT p.driver, p.lap_after - p.lap_before AS lap_change, p.status_after,
                   coalesce(d.changed, 0) AS changed, d.item, d.direction, f.recording IS NOT NULL AS problem,
                   f.size AS size_before, g.size AS size_after
            FROM pairs p
            LEFT SEMI JOIN setups b ON b.recording = p.before
            LEFT SEMI JOIN setups a ON a.recording = p.after
            LEFT JOIN (SELECT before, after, count(*) AS changed, first(item) AS item,
                              first(CASE WHEN value_after > value_before THEN 'up' WHEN value_after < value_before THEN 'down'
                                    ELSE concat(coalesce(word_before, 'none'), ' to ', coalesce(word_after, 'none')) END) AS direction
                       FROM differences
                       WHERE NOT (value_before <=> value_after AND word_before <=> word_after)
                       GROUP BY before, after) d ON d.before = p.before AND d.after = p.after
            LEFT JOIN (SELECT recording, phase, balance, `size (rad)` AS size FROM findings WHERE rank = 1) f
                   ON f.recording = p.before
            LEFT JOIN (SELECT recording, phase, balance, max(`size (rad)`) AS size FROM findings
                       GROUP BY recording, phase, balance) g
                   ON g.recording = p.after AND g.phase = f.phase AND g.balance = f.balance
            WHERE p.before IS NOT NULL AND coalesce(d.changed, 0) < 2
            """;

    private final Map<List<String>, Tried> tried = new LinkedHashMap<>();
    private final Tried unchanged = new Tried();

    /** Sums over the tries of one change. */
    private static final class Tried {
        private final Map<String, double[]> laps = new HashMap<>();
        private final Map<String, double[]> helped = new HashMap<>();
        private long tries;
        private long told;
        private long gone;
        private long less;

        void add(Row row) {
            String driver = row.getString(0);
            tries++;
            if (!row.isNullAt(1)) {
                add(laps, driver, row.getDouble(1));
            }
            if (row.getBoolean(6) && row.getString(2).equals("judged")) {
                boolean away = row.isNullAt(8);
                boolean smaller = !away && row.getDouble(8) < row.getDouble(7);
                told++;
                gone += away ? 1 : 0;
                less += smaller ? 1 : 0;
                add(helped, driver, away || smaller ? 1.0 : 0.0);
            }
        }

        private static void add(Map<String, double[]> sums, String driver, double value) {
            double[] sum = sums.computeIfAbsent(driver, who -> new double[2]);
            sum[0] += value;
            sum[1]++;
        }

        static Clusters clusters(Map<String, double[]> sums) {
            Clusters clusters = new Clusters();
            sums.values().forEach(sum -> clusters.add(sum[0], sum[1]));
            return clusters;
        }
    }

    Changes(Views views) {
        views.ask(PAIRS).createOrReplaceTempView("pairs");
        views.ask(DIFFERENCES).createOrReplaceTempView("differences");
        for (Row row : views.rows(TRIES)) {
            if (row.getLong(3) == 0) {
                unchanged.add(row);
            } else {
                tried.computeIfAbsent(List.of(row.getString(4), row.getString(5)), key -> new Tried())
                        .add(row);
            }
        }
    }

    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        tried.forEach((key, sums) -> changes.add(new Change(
                key.get(0),
                key.get(1),
                sums.tries,
                sums.laps.size(),
                sums.told,
                sums.gone,
                sums.less,
                Tried.clusters(sums.helped).share(),
                Tried.clusters(sums.laps).mean())));
        changes.sort(Comparator.comparingLong((Change change) -> -change.tries())
                .thenComparing(Change::item)
                .thenComparing(Change::direction));
        return changes;
    }

    Unchanged unchanged() {
        return new Unchanged(
                unchanged.tries,
                unchanged.laps.size(),
                unchanged.told,
                unchanged.gone,
                unchanged.less,
                Tried.clusters(unchanged.helped).share(),
                Tried.clusters(unchanged.laps).mean());
    }
}
