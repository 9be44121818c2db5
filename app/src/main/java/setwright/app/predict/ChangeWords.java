package setwright.app.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.Modelled;
import setwright.intake.yaml.Spelling;

/**
 * Reads changes as people write them: {@code front_camber=-3.5} is a new value, {@code front_bar=+1step} or {@code
 * rear_wing=-2steps} so many steps from where the sheet has it. A sign belongs to a value unless the word step follows.
 */
public final class ChangeWords {
    private static final Pattern CHANGE = Pattern.compile("([^=\\s]+)=(.*)");
    private static final Pattern STEPS = Pattern.compile("([+-]?)\\s*([0-9.,]+)\\s*steps?");
    private static final Pattern VALUE = Pattern.compile("[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)");
    private static final int MOST_STEPS_DIGITS = 6;

    private final CarSheet car;
    private final boolean modelledOnly;

    private ChangeWords(CarSheet car, boolean modelledOnly) {
        this.car = car;
        this.modelledOnly = modelledOnly;
    }

    /** Makes a reader of changes of this car that can be predicted. */
    public ChangeWords(CarSheet car) {
        this(car, true);
    }

    /** Makes a reader of changes of any number on the sheet, predictable or not. */
    public static ChangeWords ofAnyNumber(CarSheet car) {
        return new ChangeWords(car, false);
    }

    /**
     * Reads changes that are turned together.
     *
     * @throws WrongChange naming item, value, range and step
     */
    public List<SetupChange> read(List<String> words) {
        List<SetupChange> changes = new ArrayList<>();
        for (String word : words) {
            SetupChange change = read(word);
            if (changes.stream().anyMatch(other -> other.item().equals(change.item()))) {
                throw new WrongChange(word + ": " + change.item() + " is named twice. Name each item once.");
            }
            changes.add(change);
        }
        return changes;
    }

    /**
     * Returns each item that is modelled turned by one step each way, as far as its range goes, each a candidate of its
     * own.
     *
     * @throws WrongChange when that leaves none
     */
    public List<List<SetupChange>> oneStepEach() {
        return stepsEach(1);
    }

    /**
     * Returns each item that is modelled turned by so many steps each way, where its range allows it.
     *
     * @param count  1 or more
     * @throws WrongChange when that leaves none
     */
    public List<List<SetupChange>> stepsEach(int count) {
        List<List<SetupChange>> candidates = new ArrayList<>();
        for (SetupItem item : car.setup()) {
            if (new Modelled(car).obstacle(item).isPresent()) {
                continue;
            }
            for (long steps : new long[] {count, -count}) {
                new ItemRange(item)
                        .stepsAway(steps)
                        .ifPresent(value -> candidates.add(List.of(new SetupChange(item.name(), item.value(), value))));
            }
        }
        if (candidates.isEmpty()) {
            throw new WrongChange("no item of the car sheet can be turned and predicted: "
                    + car.setup().stream()
                            .map(item -> new Modelled(car)
                                    .obstacle(item)
                                    .orElse(item.name() + " has no step within its range"))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return candidates;
    }

    private SetupChange read(String word) {
        Matcher parts = CHANGE.matcher(word);
        if (!parts.matches()) {
            throw new WrongChange(
                    "\"" + word + "\" is no change: expected ITEM=VALUE, such as front_bar=3, or" + " ITEM=+1step.");
        }
        ItemRange range = new ItemRange(item(parts.group(1)));
        new Modelled(car).obstacle(range.item()).filter(why -> modelledOnly).ifPresent(obstacle -> {
            throw new WrongChange(word + ": " + obstacle + ".");
        });
        String text = parts.group(2).strip();
        Matcher steps = STEPS.matcher(text);
        double value =
                steps.matches() ? relative(word, range, steps.group(1), steps.group(2)) : absolute(word, range, text);
        if (range.same(value, range.item().value())) {
            throw new WrongChange(word + ": " + range.item().name() + " is at "
                    + ItemRange.plain(range.item().value()) + " already. Name another value, from "
                    + ItemRange.plain(range.item().min()) + " to "
                    + ItemRange.plain(range.item().max()) + " in steps of "
                    + ItemRange.plain(range.item().step()) + ".");
        }
        return new SetupChange(range.item().name(), range.item().value(), value);
    }

    /** Returns the item of that name, or says which ones there are. */
    SetupItem item(String name) {
        List<String> known = car.setup().stream().map(SetupItem::name).toList();
        if (car.label(name).isPresent()) {
            throw new WrongChange(name + " is a word, not a number: what another compound does is not predicted.");
        }
        return car.item(name)
                .orElseThrow(() -> new WrongChange("the car sheet has no item \"" + name + "\". "
                        + Spelling.nearest(name, known)
                                .map(near -> "Is " + near + " meant?")
                                .orElse("It has " + String.join(", ", known) + ".")));
    }

    private static double relative(String word, ItemRange range, String sign, String count) {
        if (sign.isEmpty()) {
            throw new WrongChange(word + ": more or less? Write +" + count + "steps or -" + count + "steps.");
        }
        if (!count.matches("0*[1-9][0-9]*") || count.length() > MOST_STEPS_DIGITS) {
            throw new WrongChange(word + ": \"" + count + "\" is no number of whole steps. Write +1step or -2steps.");
        }
        OptionalDouble value = range.stepsAway(Long.parseLong(sign + count));
        return value.orElseThrow(() -> new WrongChange(word + ": too far. " + range.words() + "."));
    }

    private static double absolute(String word, ItemRange range, String text) {
        if (!VALUE.matcher(text).matches()) {
            throw new WrongChange(word + ": \"" + text + "\" is neither a number nor steps. " + range.words()
                    + "; write a value, or +1step.");
        }
        double value = Double.parseDouble(text.replace(',', '.'));
        if (!range.holds(value)) {
            boolean signed = text.startsWith("+") || text.startsWith("-");
            throw new WrongChange(word + ": " + ItemRange.plain(value) + " is out of range. " + range.words() + "."
                    + (signed ? " For steps write " + range.item().name() + "=" + text + "step." : ""));
        }
        if (text.startsWith("+")) {
            throw new WrongChange(
                    word + ": a value or steps? Write " + range.item().name() + "=" + text.substring(1)
                            + " for the value or " + range.item().name() + "=" + text + "step for steps.");
        }
        if (!range.reaches(value)) {
            throw new WrongChange(word + ": " + ItemRange.plain(value) + " lies between two steps. " + range.words()
                    + "; " + range.nearest(value) + ".");
        }
        return value;
    }
}
