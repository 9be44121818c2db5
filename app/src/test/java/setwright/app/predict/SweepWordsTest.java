package setwright.app.predict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.simulation.sweep.SweepItem;
import setwright.intake.car.CarSheetReader;

final class SweepWordsTest {
    private static final CarSheet CAR = CarSheetReader.parse("car.yaml", """
            bar_wheel_rate_front_N_per_mm: {base: 9.0, per_position: 3.6}
            setup:
              front_bar: {value: 5, unit: position, min: 1, max: 11, step: 1}
              rear_bar: {value: 5, unit: position, min: 1, max: 11, step: 1}
              front_camber: {value: -3.4, unit: deg, min: -5, max: -1, step: 0.1}
              front_bump: {value: 14, unit: clicks, min: 1, max: 30, step: 1}
              rear_wing: {value: 6, unit: step, min: 1, max: 12, step: 1}
            """);

    @Test
    void anItemAloneGoesOverItsWholeRange() {
        SweepItem bar = read("front_bar").get(0);
        assertThat(bar.values()).containsExactly(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0);
        assertThat(bar.item().value()).isEqualTo(5.0);
    }

    @Test
    void aRangeNarrowsIt() {
        assertThat(read("front_camber=-4..-3.6").get(0).values()).containsExactly(-4.0, -3.9, -3.8, -3.7, -3.6);
        assertThat(read("front_bar=2..6").get(0).values()).hasSize(5);
    }

    @Test
    void twoItemsTakeFewerValuesEachWithThePresentOneAndBothEnds() {
        List<SweepItem> items = read("front_bar", "front_camber");
        assertThat(items.get(0).values()).contains(1.0, 5.0, 11.0).hasSizeLessThan(10);
        assertThat(items.get(1).values()).contains(-5.0, -3.4, -1.0).hasSizeLessThan(12);
    }

    @Test
    void dampersAreRefusedWithTheReason() {
        assertThatThrownBy(() -> read("front_bump"))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("front_bump: dampers act only while the body moves")
                .hasMessageContaining("predict");
    }

    @Test
    void wrongWordsSayWhatIsExpected() {
        assertThatThrownBy(() -> read("front_bra")).hasMessageContaining("Is front_bar meant?");
        assertThatThrownBy(() -> read("front_bar=2")).hasMessageContaining("FROM..TO");
        assertThatThrownBy(() -> read("front_bar=6..2")).hasMessageContaining("from 1 to 11");
        assertThatThrownBy(() -> read("front_bar=0..4")).hasMessageContaining("from 1 to 11");
        assertThatThrownBy(() -> read("front_bar", "front_bar=2..4")).hasMessageContaining("named twice");
        assertThatThrownBy(() -> read("rear_bar")).hasMessageContaining("bar_wheel_rate_rear_N_per_mm");
    }

    private static List<SweepItem> read(String... words) {
        return new SweepWords(CAR).read(List.of(words));
    }
}
