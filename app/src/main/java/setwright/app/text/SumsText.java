package setwright.app.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.units.Figures;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.Result;

/** Sums as lines of text: results first, then what they stand on. */
public final class SumsText {
    private static final String MARGIN = "  ";

    private final Terminal terminal;
    private final Figures figures;
    private final List<String> lines = new ArrayList<>();

    private SumsText(Terminal terminal, Figures figures) {
        this.terminal = terminal;
        this.figures = figures;
    }

    /** Returns the text, ending with a line break. */
    public static String write(List<Calculation> calculations, Figures figures, Terminal terminal) {
        SumsText text = new SumsText(terminal, figures);
        for (Calculation calculation : calculations) {
            if (!text.lines.isEmpty()) {
                text.lines.add("");
            }
            text.add(calculation);
        }
        calculations.stream()
                .flatMap(calculation -> calculation.caution().stream())
                .distinct()
                .forEach(caution -> text.paragraph("Caution", caution));
        return String.join("\n", text.lines) + "\n";
    }

    private void add(Calculation calculation) {
        lines.add(terminal.paint().bold(calculation.title()));
        table(
                new TextTable(
                        List.of(new Column("", false, 3), new Column("", true, 3), new Column("", false, 2)),
                        calculation.results().stream()
                                .map(result -> List.of(
                                        Cell.of(result.words()),
                                        Cell.of(figures.number(
                                                result.value(), result.unit().decimals())),
                                        Cell.of(result.unit().symbol())))
                                .toList()),
                Integer.MAX_VALUE); // a longer line does less harm than a figure without its unit
        calculation.findings().forEach(sentence -> paragraph("", sentence));
        lines.add("");
        lines.add("From");
        table(
                new TextTable(
                        List.of(
                                new Column("", false, 4),
                                new Column("", false, 1),
                                new Column("", true, 4),
                                new Column("", false, 3),
                                new Column("", false, 2)),
                        calculation.inputs().stream()
                                .map(input -> List.of(
                                        Cell.of(input.symbol()),
                                        Cell.of(input.words()),
                                        Cell.of(figures.plain(input.value())),
                                        Cell.of(input.unit().symbol()),
                                        Cell.of(input.origin().words())))
                                .toList()),
                terminal.width() - MARGIN.length());
        lines.add("");
        lines.add("How");
        formulas(calculation);
        lines.add("");
        paragraph("Source", calculation.source());
        calculation.notes().forEach(note -> paragraph("Note", note));
    }

    /** A formula that differs from one before by its numbering only says nothing new. */
    private void formulas(Calculation calculation) {
        Set<String> shown = new HashSet<>();
        for (Result result : calculation.results()) {
            if (shown.add(result.formula().replaceAll("_\\d+}", "_}"))) {
                formula(calculation, result);
            }
        }
    }

    private void formula(Calculation calculation, Result result) {
        String letters = calculation.inLetters(result);
        String numbers = calculation.with(result, quantity -> figures.inFormula(quantity.value()));
        String value = figures.number(result.value(), result.unit().decimals())
                + (result.unit().symbol().isEmpty() ? "" : " " + result.unit().symbol());
        if (result.solvesEquation()) {
            indented(letters + "   for " + result.symbol());
            indented(numbers);
            indented(result.symbol() + " = " + value);
        } else {
            indented(result.symbol() + " = " + letters);
            indented(" ".repeat(result.symbol().length()) + " = " + numbers + " = " + value);
        }
    }

    /** Keeps the spaces in front, which align the equals signs. */
    private void indented(String text) {
        String front =
                MARGIN + text.substring(0, text.length() - text.stripLeading().length());
        List<String> wrapped = Wrap.lines(text, terminal.width() - front.length());
        for (int i = 0; i < wrapped.size(); i++) {
            lines.add(front + (i == 0 ? "" : MARGIN + MARGIN) + wrapped.get(i));
        }
    }

    private void table(TextTable table, int width) {
        table.lines(width, terminal.paint()).stream()
                .filter(line -> !line.isBlank())
                .forEach(line -> lines.add(MARGIN + line));
    }

    private void paragraph(String label, String sentence) {
        String text = label.isEmpty() ? sentence : label + ": " + Figures.sentence(sentence);
        lines.addAll(Wrap.lines(text, terminal.width()));
    }
}
