package setwright.app.scoreboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FloorTest {

    private static final Map<Measure, Count> RECORDED = Map.of(
            Measure.LAPS, new Count(70, 81),
            Measure.CORNERS_RIGHT, new Count(3, 4),
            Measure.FALSE_CHANGES, new Count(1, 3));

    private final Floor floor = new Floor("2026-01-01", "abc", RECORDED);

    @Test
    void theSameAndBetterTotalsPass() {
        assertThat(floor.faults(RECORDED)).isEmpty();
        assertThat(floor.faults(Map.of(
                        Measure.LAPS, new Count(81, 81),
                        Measure.CORNERS_RIGHT, new Count(7, 8),
                        Measure.FALSE_CHANGES, new Count(0, 3))))
                .isEmpty();
    }

    @Test
    void eachWorseTotalIsNamedWithBothFigures() {
        assertThat(floor.faults(Map.of(
                        Measure.LAPS, new Count(69, 81),
                        Measure.CORNERS_RIGHT, new Count(5, 7),
                        Measure.FALSE_CHANGES, new Count(2, 3))))
                .hasSize(3)
                .anySatisfy(fault -> assertThat(fault).contains("69 of 81", "70 of 81"));
    }

    @Test
    void otherCasesAreNoticed() {
        assertThat(floor.faults(Map.of(
                        Measure.LAPS, new Count(80, 90),
                        Measure.CORNERS_RIGHT, new Count(3, 4),
                        Measure.FALSE_CHANGES, new Count(1, 3))))
                .singleElement()
                .asString()
                .contains("90", "81");
    }

    @Test
    void whatIsWrittenIsReadAgain(@TempDir Path folder) {
        Path file = folder.resolve("floor.json");

        floor.write(file);

        assertThat(Floor.read(file)).isEqualTo(floor);
    }
}
