package setwright.core.car.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.SetupLabel;

/**
 * An item that two setups of a car do not have alike.
 *
 * @param item  name on the sheet
 * @param from  on the first sheet, as people write it; empty when it lacks the item
 * @param to    on the second
 * @param unit  of both; empty for words
 */
public record SetupDifference(String item, String from, String to, String unit) {
    /** Returns all differences, by name. Fuel is none: it burns while the car runs. */
    public static List<SetupDifference> between(CarSheet first, CarSheet second) {
        TreeSet<String> names = new TreeSet<>();
        Stream.of(first, second).forEach(sheet -> {
            sheet.setup().forEach(item -> names.add(item.name()));
            sheet.labels().forEach(label -> names.add(label.name()));
        });
        List<SetupDifference> found = new ArrayList<>();
        for (String name : names) {
            String from = written(first, name);
            String to = written(second, name);
            if (!from.equals(to) && !burns(name)) {
                String unit = first.item(name)
                        .or(() -> second.item(name))
                        .map(SetupItem::unit)
                        .orElse("");
                found.add(new SetupDifference(name, from, to, unit));
            }
        }
        return found;
    }

    /** Returns the item as it is called in a sentence. */
    public String words() {
        return item.replace('_', ' ');
    }

    private static String written(CarSheet sheet, String name) {
        return sheet.item(name)
                .map(item -> ItemRange.plain(item.value()))
                .or(() -> sheet.label(name).map(SetupLabel::value))
                .orElse("");
    }

    private static boolean burns(String name) {
        return SetupCatalogue.find(name)
                .filter(kind -> kind.family() == SetupFamily.FUEL)
                .isPresent();
    }
}
