package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import setwright.app.logbook.SetupDesk.Compared;
import setwright.app.logbook.SetupDesk.Shown;

/** Writes setups as JSON of version 1: docs/setup.schema.json and docs/setup-diff.schema.json. */
public final class SetupJsonWriter {
    private static final int VERSION = 1;

    private SetupJsonWriter() {}

    record Document(int version, String car, List<Setup> setups) {}

    record Setup(
            int number,
            @JsonProperty("on_the_car") boolean onTheCar,
            String changed,
            String why,
            String together,
            Instant made,
            Map<String, Item> items) {}

    record Item(Object value, String unit) {}

    record Difference(int version, String car, int from, int to, List<TrialJson.Change> changes, String words) {}

    /** Returns the JSON text of setups of one car, ending with a line break. */
    public static String write(List<Shown> shown) {
        return Numbers.text(new Document(
                VERSION,
                shown.get(0).car().name(),
                shown.stream().map(SetupJsonWriter::setup).toList()));
    }

    /** Returns the JSON text of what two setups do not have alike, ending with a line break. */
    public static String write(Compared compared) {
        return Numbers.text(new Difference(
                VERSION,
                compared.from().car().name(),
                compared.from().setup().number(),
                compared.to().setup().number(),
                compared.items().stream()
                        .map(item -> new TrialJson.Change(item.item(), item.from(), item.to(), item.unit()))
                        .toList(),
                compared.words()));
    }

    private static Setup setup(Shown shown) {
        Map<String, Item> items = new TreeMap<>();
        shown.sheet().setup().forEach(item -> items.put(item.name(), new Item(item.value(), item.unit())));
        shown.sheet().labels().forEach(label -> items.put(label.name(), new Item(label.value(), "")));
        return new Setup(
                shown.setup().number(),
                shown.fitted(),
                shown.setup().difference(),
                shown.setup().why(),
                shown.setup().together(),
                shown.setup().madeAt(),
                items);
    }
}
