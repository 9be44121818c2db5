package setwright.app.world;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.intake.yaml.YamlFile;

/** Reads the rules of a series. */
final class SeriesReader {
    private SeriesReader() {}

    static Series parse(String file, String text) {
        Keys keys = new Keys(file, YamlFile.parse(file, text));
        keys.allowOnly(List.of("name", "circuits", "tyre_sets_per_weekend", "classes"));
        Keys group = keys.group("classes");
        Map<String, Series.CarClass> classes = new LinkedHashMap<>();
        group.names().forEach(name -> classes.put(name, carClass(group.group(name))));
        return new Series(
                keys.text("name"), keys.words("circuits"), (int) keys.number("tyre_sets_per_weekend"), classes);
    }

    private static Series.CarClass carClass(Keys keys) {
        keys.allowOnly(List.of("cars", "minimum_mass_kg", "tyres_per_set", "fixed", "items"));
        Keys group = keys.group("items");
        Map<String, Series.Allowed> items = new LinkedHashMap<>();
        for (String name : group.names()) {
            Keys item = group.group(name);
            item.allowOnly(List.of("min", "max", "step", "unit"));
            items.put(
                    name,
                    new Series.Allowed(item.number("min"), item.number("max"), item.number("step"), item.text("unit")));
        }
        return new Series.CarClass(
                keys.words("cars"),
                keys.number("minimum_mass_kg"),
                (int) keys.number("tyres_per_set"),
                keys.words("fixed"),
                items);
    }
}
