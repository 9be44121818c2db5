package setwright.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.example.ExampleCarFit;
import setwright.app.example.ExamplePrediction;
import setwright.app.predict.PredictionAnswer;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

final class PredictionTextTest {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);

    @Test
    void theAnswerStandsInTheFirstLineAndTheEvidenceBelow() {
        String text = write(ExamplePrediction.one(), 110);
        assertThat(text.lines().findFirst().orElseThrow()).startsWith("front_bar 5 -> 4: quicker by 0.");
        assertThat(text)
                .containsSubsequence(
                        "97 % sure",
                        "moves toward oversteer in mid (all",
                        "Balance  Change in deg",
                        "low corners",
                        "all corners",
                        "braking",
                        "mid",
                        "-0.16 over",
                        "now ",
                        "(+0.04)",
                        "the track decides",
                        "mid 49 %",
                        "Corners  Change of balance",
                        "left, low",
                        "lap",
                        "Why      The front axle carries 3 % less",
                        "Doubts   Centre of mass height is assumed.",
                        "qualified person");
    }

    @Test
    void severalItemsAreSaidToBeOneChange() {
        assertThat(write(ExamplePrediction.two(), 110))
                .startsWith("front_bar 5 -> 4 and front_spring 200 -> 195 N/mm together, as one change: quicker");
    }

    @Test
    void singleStepsStandInTheOrderOfTheirLapTime() {
        String text = write(ExamplePrediction.all(), 110);
        assertThat(text.lines().filter(line -> line.contains(" -> ")).skip(1))
                .hasSize(11)
                .first()
                .asString()
                .startsWith("front_bar 5 -> 4 ");
        assertThat(text).contains("of 11 changes by one step");
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 110})
    void linesFitTheWidth(int width) {
        for (PredictionAnswer answer :
                new PredictionAnswer[] {ExamplePrediction.one(), ExamplePrediction.two(), ExamplePrediction.all()}) {
            write(answer, width)
                    .lines()
                    .forEach(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
        }
        CarFitText.write(ExampleCarFit.answer(), METRIC, new Terminal(width, Paint.PLAIN))
                .lines()
                .forEach(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    }

    @Test
    void anUnsureSignIsInBracketsAndColourIsNeverTheOnlySign() {
        String coloured = PredictionText.write(ExamplePrediction.one(), METRIC, new Terminal(100, Paint.COLOURED));
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(write(ExamplePrediction.one(), 100));
    }

    @Test
    void aFitTellsItsValuesAndItsRefusals() {
        assertThat(CarFitText.write(ExampleCarFit.answer(), METRIC, new Terminal(110, Paint.PLAIN)))
                .containsSubsequence(
                        "These laps tell 2 of 3",
                        "before",
                        "Drag area",
                        "0.90",
                        "0.50 to 1.30",
                        "1.04",
                        "0.98 to 1.10",
                        "yes",
                        "96000",
                        "no",
                        "Told     Drag area: The slowing on 14 straights",
                        "Not told Share of the braking at the front: No wheel came near locking");
    }

    private static String write(PredictionAnswer answer, int width) {
        return PredictionText.write(answer, METRIC, new Terminal(width, Paint.PLAIN));
    }
}
