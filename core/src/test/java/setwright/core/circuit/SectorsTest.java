package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SectorsTest {
    private static Stint stint(double rateHz) {
        return StintBuilder.build(
                new Laps(Shape.road(), 1).rate(rateHz).count(6).drive().recording());
    }

    @ParameterizedTest
    @ValueSource(doubles = {10.0, 50.0, 100.0})
    void partsMakeTheLapAndTheRateDoesNotMatter(double rateHz) {
        Stint stint = stint(rateHz);
        Sectors sectors = Sectors.of(stint.circuit()).orElseThrow();
        Stint fine = stint(200.0);
        Sectors known = Sectors.of(fine.circuit()).orElseThrow();
        for (Lap lap : stint.goodLaps()) {
            List<Double> times = sectors.timesS(stint, lap);
            assertThat(times).hasSize(3).allSatisfy(time -> assertThat(time).isPositive());
            assertThat(times.stream().mapToDouble(Double::doubleValue).sum()).isCloseTo(lap.timeS(), within(1e-9));
            Lap same = fine.goodLaps().stream()
                    .filter(other -> other.number() == lap.number())
                    .findFirst()
                    .orElseThrow();
            List<Double> finer = known.timesS(fine, same);
            double speed = stint.circuit().line().lengthM() / lap.timeS();
            for (int i = 0; i < 3; i++) {
                double moved =
                        i < 2 ? Math.abs(sectors.cutsM().get(i) - known.cutsM().get(i)) : 0.0;
                double before = i > 0
                        ? Math.abs(sectors.cutsM().get(i - 1) - known.cutsM().get(i - 1))
                        : 0.0;
                assertThat(times.get(i))
                        .as("a cut that moved by a metre moves the time by what a metre takes; half a sample besides")
                        .isCloseTo(finer.get(i), within((moved + before + 3.0) / speed + 0.5 / rateHz));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {50.0})
    void noCornerIsCut(double rateHz) {
        Circuit circuit = stint(rateHz).circuit();
        Sectors sectors = Sectors.of(circuit).orElseThrow();
        assertThat(sectors.cutsM())
                .isSorted()
                .allSatisfy(cut -> assertThat(circuit.corners())
                        .noneMatch(corner -> corner.turnInM() < cut && cut < corner.turnOutM()));
        assertThat(sectors.corners().stream().flatMap(List::stream))
                .containsExactlyInAnyOrderElementsOf(
                        circuit.corners().stream().map(Corner::number).toList());
        assertThat(sectors.corners()).allSatisfy(part -> assertThat(part).isNotEmpty());
    }
}
