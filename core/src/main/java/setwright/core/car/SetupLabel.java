package setwright.core.car;

import java.util.List;

/**
 * One item of a setup that is a word, such as a tyre compound: it may be exchanged, but there is nothing to count or to step.
 *
 * @param name     as on the sheet, such as {@code front_tyre_compound}
 * @param value    fitted now
 * @param choices  what may be fitted, with {@code value} among them; empty when not told
 */
public record SetupLabel(String name, String value, List<String> choices) {
    public SetupLabel {
        choices = List.copyOf(choices);
        if (!choices.isEmpty() && !choices.contains(value)) {
            throw new IllegalArgumentException(
                    "setup item " + name + " is \"" + value + "\", which is not among its choices " + choices);
        }
    }
}
