package setwright.app.world;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.core.car.SetupChange;
import setwright.intake.problem.InputProblem;

/** Copies the text of a car sheet with other values in its setup; everything else, comments too, stays as it was. */
public final class SheetCopy {
    private SheetCopy() {}

    /**
     * Returns the text with changed values.
     *
     * @param name     what messages call the text
     * @param text     a car sheet whose items are written on one line each, {@code name: {value: 3, ...}}
     * @param changes  items to change; the value before is not looked at
     * @throws InputProblem when an item has no such line
     */
    public static String with(String name, String text, List<SetupChange> changes) {
        String copy = text;
        for (SetupChange change : changes) {
            Pattern line = Pattern.compile(
                    "(?m)^(\\s+" + Pattern.quote(change.item()) + "\\s*:\\s*\\{[^}\\n]*?\\bvalue\\s*:\\s*)([^,}\\s]+)");
            Matcher matcher = line.matcher(copy);
            if (!matcher.find()) {
                throw InputProblem.in(name)
                        .column(change.item())
                        .expected("the item on one line, such as " + change.item() + ": {value: 3, min: 1, max: 9}")
                        .found("none")
                        .advice("Write the item so, or change its value by hand.")
                        .problem();
            }
            copy = copy.substring(0, matcher.start(2)) + shown(change.to()) + copy.substring(matcher.end(2));
        }
        return copy;
    }

    private static String shown(double value) {
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
    }
}
