package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.app.scoreboard.Count;

/** Holds every change to the answers of the last accepted run on a few simulated cases. */
final class BenchFloorTest {

    @Test
    void noTotalIsWorseThanInTheLastAcceptedRun() {
        assertThat(BenchFloor.read().faults(BenchFloor.run()))
                .as(
                        "Answers on simulated cases changed. See which with ./truthbench --cases 6. If that is right, accept it with"
                                + " ./truthbench --floor and say why in the commit.")
                .isEmpty();
    }

    @Test
    void worseTotalsAndOtherChancesAreNamed() {
        BenchFloor before = new BenchFloor(
                1L,
                6,
                Map.of(
                        BenchMeasure.TOP_PROBLEM, new Count(3, 4),
                        BenchMeasure.FALSE_PROBLEMS, new Count(0, 1),
                        BenchMeasure.GATE, new Count(6, 6)));
        BenchFloor after = new BenchFloor(
                1L,
                6,
                Map.of(
                        BenchMeasure.TOP_PROBLEM, new Count(2, 4),
                        BenchMeasure.FALSE_PROBLEMS, new Count(1, 1),
                        BenchMeasure.GATE, new Count(5, 5)));
        assertThat(before.faults(after))
                .hasSize(3)
                .anySatisfy(fault -> assertThat(fault).contains("2 of 4", "3 of 4"))
                .anySatisfy(fault -> assertThat(fault).contains("1 of 1", "0 of 1"))
                .anySatisfy(fault -> assertThat(fault).contains("out of 5", "out of 6"));
        assertThat(before.faults(before)).isEmpty();
    }
}
