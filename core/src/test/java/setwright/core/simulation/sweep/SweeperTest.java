package setwright.core.simulation.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Corner.Direction;
import setwright.core.circuit.ReferenceLine;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.Loops;

final class SweeperTest {
    private static final CarSheet SHEET = Sheets.adjustable();
    private static final double[] PARAMETERS = CarPrior.of(SHEET).middle();

    @Test
    void eachSettingIsTheLapOfThatSetup() {
        AtomicInteger told = new AtomicInteger();
        SetupSweep sweep = sweeper().sweep(List.of(item("front_bar", 1.0, 4.0, 9.0)), told::incrementAndGet);
        assertThat(told).hasValue(4);
        assertThat(sweep.laps()).hasSize(3);
        assertThat(sweep.at(1, 0)).isEqualTo(sweep.present());
        double direct = LapSimulator.lap(
                        Envelope.of(new CarAssembler(SHEET)
                                .build(SHEET.with(List.of(new SetupChange("front_bar", 4.0, 9.0))), PARAMETERS)),
                        circuit().line())
                .timeS();
        assertThat(sweep.at(2, 0).timeS()).isCloseTo(direct, within(0.03));
        assertThat(sweep.at(0, 0).timeS()).isNotEqualTo(sweep.at(2, 0).timeS());
    }

    @Test
    void twoItemsMakeAMapWhoseAnswersDoNotDependOnTheOrder() {
        SweepItem bars = item("front_bar", 3.0, 5.0);
        SweepItem wings = item("rear_wing", 5.0, 6.0, 8.0);
        SetupSweep one = sweeper().sweep(List.of(bars, wings), () -> {});
        SetupSweep other = sweeper().sweep(List.of(wings, bars), () -> {});
        assertThat(one.laps()).hasSize(6);
        assertThat(one.at(1, 2).values()).containsExactly(5.0, 8.0);
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(one.at(i, j).timeS()).isEqualTo(other.at(j, i).timeS());
            }
        }
    }

    @Test
    void cornersAreSplitByTheirSpeed() {
        SetupSweep sweep = sweeper().sweep(List.of(item("front_bar", 3.0, 5.0)), () -> {});
        assertThat(sweep.slowCorners()).containsExactly(1, 2);
        assertThat(sweep.fastCorners()).containsExactly(3);
        SweptLap lap = sweep.present();
        assertThat(lap.lowestMps(sweep.fastCorners()).orElseThrow())
                .isGreaterThan(lap.lowestMps(sweep.slowCorners()).orElseThrow());
        assertThat(lap.frontShare() + lap.rearShare() + lap.engineShare()).isCloseTo(1.0, within(1e-9));
    }

    @Test
    void dampersAreNamedAsUnseenAndSpringsAreNot() {
        assertThat(List.of(
                        "front_bump",
                        "rear_rebound",
                        "front_bump_low",
                        "rear_bump_high",
                        "front_rebound_low",
                        "rear_rebound_high"))
                .allSatisfy(item -> assertThat(Unseen.why(item)).isPresent());
        assertThat(List.of("front_spring", "rear_bar", "front_bump_stop_gap", "rear_wing", "final_drive", "fuel"))
                .allSatisfy(item -> assertThat(Unseen.why(item)).isEmpty());
    }

    @Test
    void oneItemOrTwoWithRisingValues() {
        assertThatThrownBy(() -> sweeper().sweep(List.of(), () -> {})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> item("front_bar", 3.0)).hasMessageContaining("front_bar");
        assertThatThrownBy(() -> item("front_bar", 3.0, 2.0)).hasMessageContaining("rise");
    }

    private static Sweeper sweeper() {
        return new Sweeper(SHEET, PARAMETERS, circuit());
    }

    private static SweepItem item(String name, Double... values) {
        return new SweepItem(SHEET.item(name).orElseThrow(), List.of(values));
    }

    private static Circuit circuit() {
        double[] curvature = Loops.circuit(1250);
        double[] none = new double[curvature.length];
        return new Circuit(
                "invented",
                new ReferenceLine(4.0, none, none, none, curvature),
                List.of(
                        new Corner(1, Direction.LEFT, 150.0, 240.0, 300.0, 360.0, 420.0),
                        new Corner(2, Direction.RIGHT, 600.0, 670.0, 700.0, 730.0, 800.0),
                        new Corner(3, Direction.LEFT, 3700.0, 3780.0, 3900.0, 4020.0, 4100.0)),
                new Circuit.Unanchored());
    }
}
