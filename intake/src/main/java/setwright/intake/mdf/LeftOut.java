package setwright.intake.mdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Channels that become no columns, and why. */
final class LeftOut {
    private static final int MOST_NAMES = 5;

    private final Map<String, List<String>> names = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    /**
     * Notes one.
     *
     * @param why  read after "because"
     */
    void add(String name, String why) {
        counts.merge(why, 1, Integer::sum);
        List<String> shown = names.computeIfAbsent(why, key -> new ArrayList<>());
        if (shown.size() < MOST_NAMES) {
            shown.add("'" + name + "'");
        }
    }

    /** Returns one sentence for each reason. */
    List<String> remarks() {
        List<String> sentences = new ArrayList<>();
        names.forEach((why, shown) -> {
            int more = counts.getOrDefault(why, 0) - shown.size();
            sentences.add("Left out of the recording: " + String.join(", ", shown)
                    + (more > 0 ? " and " + more + " more" : "") + ", because " + why + ".");
        });
        return sentences;
    }
}
