package setwright.fleet.measure;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import setwright.fleet.ledger.Status;

/** What came of recordings on both sides, counted and held against each other: a race is no race when one runner stops half way. */
final class Ends {
    private static final int SHOWN = 10;

    private Ends() {}

    /** Returns the counts in words. */
    static String counted(Map<String, String> ends) {
        return String.format(
                Locale.ROOT,
                "%d recordings: %d judged, %d not judgeable, %d failed",
                ends.size(),
                count(ends, Status.JUDGED),
                count(ends, Status.NOT_ENOUGH_EVIDENCE),
                count(ends, Status.FAILED));
    }

    private static long count(Map<String, String> ends, Status status) {
        return ends.values().stream().filter(status.words()::equals).count();
    }

    /**
     * Checks them.
     *
     * @param bare    of recordings that the bare core judged, by path
     * @param fleet   of all
     * @param broken  paths of those that were broken on purpose
     * @throws IOException when a recording came to different ends, or others failed than those that were broken
     */
    static void check(Map<String, String> bare, Map<String, String> fleet, Set<String> broken) throws IOException {
        List<String> wrong = new ArrayList<>();
        bare.forEach((path, end) -> {
            if (!end.equals(fleet.getOrDefault(path, ""))) {
                wrong.add(path + ": " + end + " by the bare core, " + fleet.getOrDefault(path, "not looked at")
                        + " by the fleet");
            }
        });
        Set<String> all = new TreeSet<>(fleet.keySet());
        all.addAll(broken);
        for (String path : all) {
            boolean failed = fleet.getOrDefault(path, "").equals(Status.FAILED.words());
            if (failed != broken.contains(path)) {
                wrong.add(path + ": " + (failed ? "failed, but was not broken" : "was broken, but did not fail"));
            }
        }
        if (!wrong.isEmpty()) {
            throw new IOException("the two sides cannot be compared, in " + wrong.size() + " points: "
                    + String.join("; ", wrong.subList(0, Math.min(SHOWN, wrong.size()))));
        }
    }
}
