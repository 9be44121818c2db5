package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ReliabilityTest {
    private static final List<Stated> ANSWERS =
            List.of(new Stated(0.8, true), new Stated(0.8, false), new Stated(0.3, false), new Stated(0.3, false));

    @Test
    void theErrorOfCalibrationIsTheDistanceOfStatedAndRight() {
        double roundOff = 1.0e-12;
        double byHand = (0.3 + 0.3) / 2.0;
        assertThat(new Reliability(ANSWERS, 0.0, 0.5, 1.0).error()).isCloseTo(byHand, within(roundOff));
    }

    @Test
    void everyRangeWithAnAnswerHasARow() {
        assertThat(new Reliability(ANSWERS, 0.0, 0.5, 0.7, 1.0).table().rows())
                .extracting(row -> row.get(0) + ": " + row.get(1) + " " + row.get(2))
                .containsExactly("0.00 to 0.50: 30 0 of 2", "0.70 to 1.00: 80 1 of 2", "all: 55 1 of 4");
    }

    @Test
    void noAnswersMakeNoRow() {
        Reliability none = new Reliability(List.of(), 0.0, 1.0);
        assertThat(none.table().rows()).isEmpty();
        assertThat(none.error()).isZero();
    }
}
