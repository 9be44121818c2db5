package setwright.fleet.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.spark.sql.Row;
import setwright.fleet.summary.Summary.AtCorner;
import setwright.fleet.summary.Summary.Problem;

/** Which problems and faults there are, and in which corners. */
final class Problems {
    private Problems() {}

    static List<Problem> all(Views views) {
        Map<String, Long> judged = new HashMap<>();
        views.rows("SELECT coalesce(driver, recording) AS who, count(*) AS n FROM judged GROUP BY who")
                .forEach(row -> judged.put(row.getString(0), row.getLong(1)));
        long of = judged.values().stream().mapToLong(Long::longValue).sum();
        Map<List<String>, Map<String, Long>> seen = new LinkedHashMap<>();
        views.rows("SELECT kind, what, who, count(DISTINCT recording) FROM troubles GROUP BY kind, what, who")
                .forEach(
                        row -> seen.computeIfAbsent(List.of(row.getString(0), row.getString(1)), key -> new HashMap<>())
                                .put(row.getString(2), row.getLong(3)));
        Map<List<String>, OptionalDouble> costs = new HashMap<>();
        views.rows("SELECT kind, what, percentile(cost, 0.5) FROM troubles GROUP BY kind, what")
                .forEach(row -> costs.put(List.of(row.getString(0), row.getString(1)), number(row, 2)));
        List<Problem> problems = new ArrayList<>();
        seen.forEach((key, drivers) -> {
            Clusters clusters = new Clusters();
            judged.forEach((who, n) -> clusters.add((double) drivers.getOrDefault(who, 0L), (double) n));
            problems.add(new Problem(
                    key.get(1),
                    key.get(0),
                    drivers.values().stream().mapToLong(Long::longValue).sum(),
                    of,
                    drivers.size(),
                    clusters.share(),
                    costs.getOrDefault(key, OptionalDouble.empty())));
        });
        problems.sort(Comparator.comparingLong((Problem problem) -> -problem.recordings())
                .thenComparing(Problem::kind)
                .thenComparing(Problem::what));
        return problems;
    }

    static List<AtCorner> corners(Views views) {
        Map<String, Map<String, Long>> judged = new HashMap<>();
        views.rows("""
                        SELECT circuit, coalesce(driver, recording) AS who, count(*) FROM judged
                        WHERE `shared corners` AND circuit IS NOT NULL GROUP BY circuit, who
                        """)
                .forEach(row -> judged.computeIfAbsent(row.getString(0), name -> new HashMap<>())
                        .put(row.getString(1), row.getLong(2)));
        record Place(String circuit, int corner, String what) {}
        record Sum(long recordings, OptionalDouble costS) {}
        Map<Place, Map<String, Sum>> seen = new LinkedHashMap<>();
        views.rows("""
                        SELECT circuit, CAST(corner AS INT) AS corner, what, who, count(DISTINCT recording), sum(cost / many)
                        FROM (SELECT t.*, explode(split(t.corners, ' ')) AS corner, size(split(t.corners, ' ')) AS many
                              FROM troubles t JOIN judged j ON t.recording = j.recording
                              WHERE j.`shared corners` AND t.circuit IS NOT NULL AND t.corners IS NOT NULL)
                        GROUP BY circuit, corner, what, who
                        """)
                .forEach(row -> seen.computeIfAbsent(
                                new Place(row.getString(0), row.getInt(1), row.getString(2)), key -> new HashMap<>())
                        .put(row.getString(3), new Sum(row.getLong(4), number(row, 5))));
        List<AtCorner> corners = new ArrayList<>();
        seen.forEach((place, drivers) -> {
            Clusters shares = new Clusters();
            Clusters costs = new Clusters();
            Map<String, Long> there = judged.getOrDefault(place.circuit(), Map.of());
            there.forEach((who, n) -> {
                Sum sum = drivers.getOrDefault(who, new Sum(0, OptionalDouble.empty()));
                shares.add((double) sum.recordings(), (double) n);
                costs.add(sum.costS().orElse(0.0), (double) n);
            });
            corners.add(new AtCorner(
                    place.circuit(),
                    place.corner(),
                    place.what(),
                    drivers.values().stream().mapToLong(Sum::recordings).sum(),
                    there.values().stream().mapToLong(Long::longValue).sum(),
                    drivers.size(),
                    shares.share(),
                    drivers.values().stream().anyMatch(sum -> sum.costS().isPresent())
                            ? costs.mean()
                            : Figure.untold()));
        });
        corners.sort(Comparator.comparing(AtCorner::circuit)
                .thenComparing(corner -> -corner.costS().value().orElse(0.0))
                .thenComparing(corner -> -corner.recordings())
                .thenComparing(AtCorner::corner)
                .thenComparing(AtCorner::what));
        return corners;
    }

    static OptionalDouble number(Row row, int column) {
        return row.isNullAt(column) ? OptionalDouble.empty() : OptionalDouble.of(row.getDouble(column));
    }
}
