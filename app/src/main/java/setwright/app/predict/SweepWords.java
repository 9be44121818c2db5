package setwright.app.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.Modelled;
import setwright.core.simulation.sweep.SweepItem;
import setwright.core.simulation.sweep.Unseen;

/**
 * Reads which items are to be swept: {@code front_bar} over its whole range, {@code front_bar=2..6} over a part of it. Values are whole
 * steps from where the sheet has the item, as many steps apart as keeps the number of laps small, and both ends.
 */
public final class SweepWords {
    private static final Pattern WORD = Pattern.compile("([^=\\s]+)(?:=(.*))?");
    private static final String NUMBER = "[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)";
    private static final Pattern RANGE = Pattern.compile("\\s*(" + NUMBER + ")\\s*\\.\\.\\s*(" + NUMBER + ")\\s*");
    /** So that one item takes about forty laps and two about a hundred. */
    private static final int MOST_OF_ONE = 40;

    private static final int MOST_OF_TWO = 9;

    private final CarSheet car;

    /** Makes a reader of this car's items. */
    public SweepWords(CarSheet car) {
        this.car = car;
    }

    /**
     * Reads one or two items.
     *
     * @throws WrongChange naming item, range and step
     */
    public List<SweepItem> read(List<String> words) {
        List<SweepItem> items = new ArrayList<>();
        for (String word : words) {
            SweepItem item = read(word, words.size() > 1 ? MOST_OF_TWO : MOST_OF_ONE);
            if (items.stream().anyMatch(other -> other.item().equals(item.item()))) {
                throw new WrongChange(word + ": " + item.item().name() + " is named twice. Name two different items.");
            }
            items.add(item);
        }
        return items;
    }

    private SweepItem read(String word, int most) {
        Matcher parts = WORD.matcher(word);
        if (!parts.matches()) {
            throw new WrongChange(
                    "\"" + word + "\" names no item: expected ITEM, or ITEM=FROM..TO, such as front_bar=2..6.");
        }
        SetupItem item = new ChangeWords(car).item(parts.group(1));
        Unseen.why(item.name()).ifPresent(why -> {
            throw new WrongChange(item.name() + ": " + why + ". Use predict on recorded laps for dampers.");
        });
        new Modelled(car).obstacle(item).ifPresent(obstacle -> {
            throw new WrongChange(item.name() + ": " + obstacle + ".");
        });
        ItemRange range = new ItemRange(item);
        double from = item.min();
        double to = item.max();
        if (parts.group(2) != null) {
            Matcher ends = RANGE.matcher(parts.group(2));
            if (!ends.matches()) {
                throw new WrongChange(word + ": \"" + parts.group(2) + "\" is no range. " + range.words() + "; write "
                        + item.name() + "=FROM..TO.");
            }
            from = number(ends.group(1));
            to = number(ends.group(2));
            if (!range.holds(from) || !range.holds(to) || !(from < to)) {
                throw new WrongChange(
                        word + ": a range within its own, from the lower to the higher value, is expected. "
                                + range.words() + ".");
            }
        }
        List<Double> values = values(range, from, to, most);
        if (values.size() < 2) {
            throw new WrongChange(word + ": there is one value only in that range. " + range.words() + ".");
        }
        return new SweepItem(item, values);
    }

    private static List<Double> values(ItemRange range, double from, double to, int most) {
        SetupItem item = range.item();
        long first = (long) Math.ceil((from - item.value()) / item.step() - 1.0e-6);
        long last = (long) Math.floor((to - item.value()) / item.step() + 1.0e-6);
        long stride = 1 + Math.max(0, last - first) / most;
        TreeSet<Double> values = new TreeSet<>(List.of(from, to));
        for (long steps = -(-first / stride) * stride; steps <= last; steps += stride) {
            range.stepsAway(steps).stream()
                    .filter(value -> value > from && value < to && !range.same(value, from) && !range.same(value, to))
                    .forEach(values::add);
        }
        return List.copyOf(values);
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }
}
