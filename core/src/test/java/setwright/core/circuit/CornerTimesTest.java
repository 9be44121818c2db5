package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CornerTimesTest {
    private static Stint stint(double rateHz) {
        return StintBuilder.build(
                new Laps(Shape.road(), 1).rate(rateHz).count(6).drive().recording());
    }

    @ParameterizedTest
    @ValueSource(doubles = {10.0, 50.0, 200.0})
    void theyMakeTheLap(double rateHz) {
        Stint stint = stint(rateHz);
        Map<Integer, List<Double>> times = CornerTimes.of(stint);
        assertThat(times)
                .containsOnlyKeys(
                        stint.circuit().corners().stream().map(Corner::number).toList());
        mustMakeTheLaps(times, stint);
        assertThat(times.values())
                .allSatisfy(laps ->
                        assertThat(laps).allSatisfy(time -> assertThat(time).isNotNegative()));
    }

    /** What is lost between a corner's approach and the next one's is that corner's. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void aSlowStretchIsItsCorners(int number) {
        Circuit circuit = stint(100.0).circuit();
        Corner slow = circuit.corners().stream()
                .filter(corner -> corner.number() == number)
                .findFirst()
                .orElseThrow();
        Laps laps = new Laps(Shape.road(), 1).rate(100.0).count(6);
        for (int lap = 0; lap < 8; lap++) {
            laps.slower(lap, slow.turnInM(), slow.turnOutM(), 0.97);
        }
        Stint slower = StintBuilder.build(laps.drive().recording(), circuit);
        Map<Integer, List<Double>> usual = CornerTimes.of(stint(100.0));
        Map<Integer, List<Double>> now = CornerTimes.of(slower);
        double lost = slower.goodLaps().get(2).timeS()
                - stint(100.0).goodLaps().get(2).timeS();
        assertThat(lost).isPositive();
        usual.forEach((corner, times) -> {
            double there = now.get(corner).get(2) - times.get(2);
            if (corner == number) {
                assertThat(there).isGreaterThan(0.8 * lost);
            } else {
                assertThat(there).isLessThan(0.2 * lost);
            }
        });
    }

    /** The first corner of a circuit may begin so near to the line that no sample lies between. */
    @Test
    void aCornerAtTheStartLineBeginsThere() {
        Stint stint = stint(50.0);
        Circuit circuit = stint.circuit();
        List<Corner> corners = circuit.corners().stream()
                .map(corner -> corner.number() == 1 ? from(corner, 3.0) : corner)
                .toList();
        assertThat(corners.get(0).turnInM()).isGreaterThan(3.0);
        Stint moved = StintBuilder.build(
                new Laps(Shape.road(), 1).count(6).drive().recording(),
                new Circuit(circuit.name(), circuit.line(), corners, circuit.anchor()));
        Map<Integer, List<Double>> times = CornerTimes.of(moved);
        assertThat(times).hasSize(corners.size());
        mustMakeTheLaps(times, moved);
    }

    /** Of two corners on either side of the line the one after it has the way to the next. */
    @Test
    void cornersOnBothSidesOfTheLineKeepTheirOrder() {
        Circuit circuit = stint(50.0).circuit();
        double length = circuit.line().lengthM();
        int last = circuit.corners().size();
        List<Corner> corners = circuit.corners().stream()
                .map(corner -> corner.number() == 1
                        ? from(corner, 3.0)
                        : corner.number() == last
                                ? new Corner(
                                        last,
                                        corner.direction(),
                                        length - 15.0,
                                        length - 12.0,
                                        length - 10.0,
                                        length - 5.0,
                                        length - 1.0)
                                : corner)
                .toList();
        Stint moved = StintBuilder.build(
                new Laps(Shape.road(), 1).count(6).drive().recording(),
                new Circuit(circuit.name(), circuit.line(), corners, circuit.anchor()));
        assertThat(CornerTimes.of(moved)).hasSize(last - 1).containsKey(1).doesNotContainKey(last);
    }

    private static Corner from(Corner corner, double startM) {
        return new Corner(
                corner.number(),
                corner.direction(),
                startM,
                corner.turnInM(),
                corner.apexM(),
                corner.turnOutM(),
                corner.endM());
    }

    private static void mustMakeTheLaps(Map<Integer, List<Double>> times, Stint stint) {
        for (int i = 0; i < stint.goodLaps().size(); i++) {
            int lap = i;
            assertThat(times.values().stream()
                            .mapToDouble(laps -> laps.get(lap))
                            .sum())
                    .isCloseTo(stint.goodLaps().get(lap).timeS(), within(1e-9));
        }
    }
}
