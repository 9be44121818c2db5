package setwright.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Verdict;

final class TextReportTest {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);

    @Test
    void tellsTheChainInOrderAndEndsWithTheVerdict() {
        String text = TextReport.write(Example.answer(), METRIC, new Terminal(100, Paint.PLAIN));
        assertThat(text)
                .containsSubsequence(
                        "Laps     12 of 14 laps can be read.",
                        "Driving  These 12 laps can show a balance change of 0.09 deg",
                        "Corner 6 is left out: its balance scatters so that no change below 0.31 deg shows;",
                        "Balance  On entry of corners 3, 4, 7, 8, 10 and 13 the rear gives up first",
                        "Cause    It begins as the brake comes off (probability 0.83).",
                        "Pattern  Entry oversteer in low-speed corners",
                        "Verdict  Change the car: entry oversteer in low-speed corners costs 0.31 s a lap.",
                        "Next     1. Make one change, and only one",
                        "qualified person");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 110})
    void linesFitTheWidth(int width) {
        TextReport.write(Example.answer(), METRIC, new Terminal(width, Paint.PLAIN))
                .lines()
                .forEach(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    }

    @Test
    void plainTextHoldsNoControlCharacters() {
        assertThat(TextReport.write(
                        Example.answer("a\u001b[31mred\u0007.csv", "circuit", "car"),
                        METRIC,
                        new Terminal(80, Paint.PLAIN)))
                .doesNotContain("\u001b", "\u0007");
    }

    @Test
    void colourIsNeverTheOnlySign() {
        String coloured = TextReport.write(Example.answer(), METRIC, new Terminal(100, Paint.COLOURED));
        assertThat(coloured).contains("\u001b[");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(TextReport.write(Example.answer(), METRIC, new Terminal(100, Paint.PLAIN)));
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void everyVerdictIsSaid(Verdict verdict) {
        assertThat(TextReport.write(Example.without(verdict, "so it is"), METRIC, new Terminal(80, Paint.PLAIN)))
                .contains("Verdict", "So it is.", "Next", "1. ");
    }

    @Test
    void colourIsOffWhereItIsNotWanted() {
        assertThat(Terminal.of(Map.of(), true, 90)).isEqualTo(new Terminal(90, Paint.COLOURED));
        assertThat(Terminal.of(Map.of("NO_COLOR", "1"), true, 90).paint()).isEqualTo(Paint.PLAIN);
        assertThat(Terminal.of(Map.of("TERM", "dumb"), true, 90).paint()).isEqualTo(Paint.PLAIN);
        assertThat(Terminal.of(Map.of(), false, 90)).isEqualTo(new Terminal(80, Paint.PLAIN));
        assertThat(Terminal.of(Map.of("COLUMNS", "64"), false, 90).width()).isEqualTo(64);
    }

    @Test
    void aTableDropsItsLightestColumnsFirst() {
        TextTable table = new TextTable(
                List.of(
                        new TextTable.Column("corner", true, 9),
                        new TextTable.Column("a remark", false, 1),
                        new TextTable.Column("entry", true, 5)),
                List.of(List.of(TextTable.Cell.of("4"), TextTable.Cell.of("steady"), TextTable.Cell.of("-0.4"))));
        assertThat(table.lines(40, Paint.PLAIN)).containsExactly("corner  a remark  entry", "     4  steady     -0.4");
        assertThat(table.lines(14, Paint.PLAIN)).containsExactly("corner  entry", "     4   -0.4");
    }
}
