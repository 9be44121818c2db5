package setwright.app.simulate;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.core.car.SetupChange;

/** The text of a car sheet with other values: comments and order stay as somebody wrote them. */
public final class SheetText {
    private SheetText() {}

    /**
     * Returns the text with the value of each changed item replaced.
     *
     * @param sheet    a car sheet with one line for each setup item, {@code name: {value: 4, unit: ...}}
     * @param changes  to items that it has
     * @throws IllegalArgumentException when it has no such line
     */
    public static String with(String sheet, List<SetupChange> changes) {
        String text = sheet;
        for (SetupChange change : changes) {
            Pattern line =
                    Pattern.compile("(?m)^(\\s*" + Pattern.quote(change.item()) + ":\\s*\\{\\s*value:\\s*)([^,}\\s]+)");
            Matcher matcher = line.matcher(text);
            if (!matcher.find()) {
                throw new IllegalArgumentException("the car sheet has no line for " + change.item());
            }
            String value = BigDecimal.valueOf(change.to()).stripTrailingZeros().toPlainString();
            text = text.substring(0, matcher.start(2)) + value + text.substring(matcher.end(2));
        }
        return text;
    }
}
