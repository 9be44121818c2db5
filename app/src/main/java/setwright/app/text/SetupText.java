package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import setwright.app.logbook.SetupDesk.Compared;
import setwright.app.logbook.SetupDesk.Shown;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.core.car.SetupItem;
import setwright.core.car.SetupLabel;
import setwright.core.car.setup.ItemRange;

/** Setups, as lines of text. */
public final class SetupText {
    private SetupText() {}

    /** Returns one setup with its items, ending with a line break. */
    public static String write(Shown shown, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        lines.wide(title(shown) + (shown.fitted() ? ", on the car." : ", not on the car."));
        made(shown).forEach(lines::faint);
        List<List<Cell>> rows = new ArrayList<>();
        for (SetupItem item : shown.sheet().setup()) {
            rows.add(List.of(
                    Cell.of(item.name()),
                    Cell.of(ItemRange.plain(item.value())),
                    Cell.of(item.unit()),
                    Cell.of(ItemRange.plain(item.min()) + " to " + ItemRange.plain(item.max()) + " by "
                            + ItemRange.plain(item.step()))));
        }
        for (SetupLabel label : shown.sheet().labels()) {
            rows.add(List.of(
                    Cell.of(label.name()),
                    Cell.of(label.value()),
                    Cell.of(""),
                    Cell.of(String.join(", ", label.choices()))));
        }
        if (!rows.isEmpty()) {
            lines.gap();
            lines.wide(new TextTable(
                    List.of(
                            new Column("item", false, 9),
                            new Column("value", true, 9),
                            new Column("unit", false, 7),
                            new Column("may be", false, 5)),
                    rows));
        }
        return lines.text();
    }

    /** Returns all versions of a car with what each changed, ending with a line break. */
    public static String list(List<Shown> all, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        for (Shown shown : all) {
            lines.paragraph(
                    (shown.fitted() ? "* " : "  ") + shown.setup().number(),
                    (shown.setup().difference().isEmpty()
                                    ? "As it came"
                                    : shown.setup().difference())
                            + (shown.setup().why().isEmpty()
                                    ? "."
                                    : " (" + shown.setup().why() + ")."));
        }
        lines.gap();
        lines.faint("* is on the car.");
        return lines.text();
    }

    /** Returns what two setups do not have alike, ending with a line break. */
    public static String write(Compared compared, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        lines.wide(title(compared.from()) + " against setup "
                + compared.to().setup().number() + ".");
        lines.paragraphs(
                "",
                compared.words().isEmpty()
                        ? List.of("They are alike.")
                        : List.of(compared.words().split(", ")));
        return lines.text();
    }

    private static String title(Shown shown) {
        return shown.car().name() + ", setup " + shown.setup().number();
    }

    private static List<String> made(Shown shown) {
        List<String> words = new ArrayList<>();
        if (!shown.setup().difference().isEmpty()) {
            words.add("Changed: " + shown.setup().difference() + ".");
        }
        if (!shown.setup().why().isEmpty()) {
            words.add("Why: " + shown.setup().why() + ".");
        }
        return words;
    }
}
