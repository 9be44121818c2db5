package setwright.app.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import setwright.app.predict.ChangeWords;
import setwright.app.predict.WrongChange;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupLabel;
import setwright.core.car.setup.ItemRange;
import setwright.intake.car.SheetText;

/** Changes of a setup as people write them, of numbers and of words such as a tyre compound. */
final class SetupEdit {
    /** What needs no quotes in YAML and no second look at the circuit. */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} _.-]*");

    private SetupEdit() {}

    /**
     * Returns the sheet with all changes.
     *
     * @throws WrongChange naming what is wrong with one
     */
    static SheetText of(SheetText text, CarSheet car, List<String> words) {
        List<String> numbers = new ArrayList<>();
        SheetText changed = text;
        for (String word : words) {
            int equals = word.indexOf('=');
            Optional<SetupLabel> label = equals < 0 ? Optional.empty() : car.label(word.substring(0, equals));
            if (label.isPresent()) {
                changed = changed.with(label.get().name(), chosen(word, label.get(), word.substring(equals + 1)));
            } else {
                numbers.add(word);
            }
        }
        for (SetupChange change : ChangeWords.ofAnyNumber(car).read(numbers)) {
            changed = changed.with(change.item(), ItemRange.plain(change.to()));
        }
        return changed;
    }

    private static String chosen(String word, SetupLabel label, String value) {
        if (!label.choices().isEmpty() && !label.choices().contains(value)) {
            throw new WrongChange(word + ": " + label.name() + " may be " + String.join(", ", label.choices()) + ".");
        }
        if (!WORD.matcher(value).matches()) {
            throw new WrongChange(word + ": write a word of letters and digits, such as soft.");
        }
        if (value.equals(label.value())) {
            throw new WrongChange(word + ": " + label.name() + " is " + value + " already.");
        }
        return value;
    }
}
