package setwright.app.scoreboard;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The totals of the last accepted run.
 *
 * @param date    of that run, ISO 8601
 * @param commit  whose code gave them
 * @param totals  by name of the measure
 */
record Floor(String date, String commit, Map<Measure, Count> totals) {
    static Floor read(Path file) {
        return mapper().readValue(file.toFile(), Floor.class);
    }

    void write(Path file) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("date", date);
        tree.put("commit", commit);
        tree.put("totals", totals);
        mapper().writeValue(file.toFile(), tree);
    }

    /** Returns one sentence for each total that has become worse, or that no longer counts the same chances. */
    List<String> faults(Map<Measure, Count> now) {
        List<String> faults = new ArrayList<>();
        totals.forEach((measure, before) -> {
            Count count = now.getOrDefault(measure, new Count(0, 0));
            if (measure.aim() == Measure.Aim.MANY && count.of() != before.of()) {
                faults.add(measure.words() + ": counted out of " + count.of() + ", recorded out of " + before.of()
                        + "; cases or rules have changed");
            } else if (measure.worse(count, before)) {
                faults.add(measure.words() + ": " + count + " now, " + before + " recorded");
            }
        });
        return faults;
    }

    private static JsonMapper mapper() {
        return JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    }
}
