package setwright.fleet.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import setwright.core.pooling.ShareHierarchy;
import setwright.core.pooling.ShareHierarchy.Count;
import setwright.fleet.summary.Summary.AtDriver;

/*
 * Design note. A driver with one recording that shows a fault has it in all of his recordings, which says next to nothing. So shares are
 * drawn from a beta distribution that all drivers have in common (core.pooling), and a driver is named when his own share lies above
 * its mean with the probability below.
 */

/** Which drivers have more of a fault than is usual here. */
final class Drivers {
    private static final double SURE = 0.95;

    private Drivers() {}

    static List<AtDriver> standingOut(Views views) {
        Map<String, Long> judged = new TreeMap<>();
        views.rows("SELECT driver, count(*) FROM judged WHERE driver IS NOT NULL GROUP BY driver")
                .forEach(row -> judged.put(row.getString(0), row.getLong(1)));
        if (judged.size() < Clusters.FEWEST) {
            return List.of(); // nothing is usual among so few
        }
        Map<String, Map<String, Long>> seen = new TreeMap<>();
        views.rows("""
                        SELECT what, who, count(DISTINCT recording) FROM troubles WHERE kind IN ('driving', 'driver')
                        GROUP BY what, who
                        """)
                .forEach(row -> seen.computeIfAbsent(row.getString(0), what -> new HashMap<>())
                        .put(row.getString(1), row.getLong(2)));
        List<AtDriver> found = new ArrayList<>();
        seen.forEach((what, of) -> found.addAll(of(what, of, judged)));
        found.sort(Comparator.comparingDouble((AtDriver one) -> -one.probability())
                .thenComparing(AtDriver::driver)
                .thenComparing(AtDriver::what));
        return found;
    }

    /** Drivers with the same counts are worked out once. */
    static List<AtDriver> of(String what, Map<String, Long> seen, Map<String, Long> judged) {
        Map<List<Integer>, List<String>> alike = new HashMap<>();
        judged.forEach((driver, n) -> alike.computeIfAbsent(
                        List.of(seen.getOrDefault(driver, 0L).intValue(), n.intValue()), count -> new ArrayList<>())
                .add(driver));
        List<List<Integer>> counts = List.copyOf(alike.keySet());
        ShareHierarchy shares = ShareHierarchy.of(
                counts.stream()
                        .map(count -> new Count(count.get(0), count.get(1)))
                        .toList(),
                counts.stream()
                        .map(count -> alike.getOrDefault(count, List.of()).size())
                        .toList());
        double usual = shares.mean();
        List<AtDriver> found = new ArrayList<>();
        for (int j = 0; j < counts.size(); j++) {
            double probability = shares.aboveMean(j);
            if (probability >= SURE) {
                double share = shares.group(j);
                List<Integer> count = counts.get(j);
                alike.getOrDefault(count, List.of())
                        .forEach(driver -> found.add(
                                new AtDriver(driver, what, count.get(0), count.get(1), share, usual, probability)));
            }
        }
        return found;
    }
}
