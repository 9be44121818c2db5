package setwright.core.simulation.driver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.circuit.Lines;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

final class StintSimulatorTest {
    private static final ReferenceLine LINE = Lines.road();
    private static final CarModel STABLE = car(-0.07, List.of());

    private static CarModel car(double gripSplit, List<SetupChange> changes) {
        CarSheet sheet = Sheets.adjustable();
        double[] values = CarPrior.of(sheet).middle();
        values[Parameter.GRIP_SPLIT.index()] = gripSplit;
        return new CarAssembler(sheet).build(sheet.with(changes), values);
    }

    private static DrivenStint drive(CarModel car, DriverStyle style, int flying, int practice, long seed) {
        return StintSimulator.drive(new StintPlan(
                LINE,
                RoadBumps.NONE,
                car,
                RunningGear.usual(),
                TyreCondition.usual(),
                Tank.CONSTANT,
                style,
                flying,
                practice,
                seed));
    }

    private static double deviation(List<Double> laps) {
        List<Double> flying = laps.subList(1, laps.size());
        double mean = flying.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double sum = flying.stream().mapToDouble(t -> (t - mean) * (t - mean)).sum();
        return Math.sqrt(sum / (flying.size() - 1)) / mean;
    }

    @Test
    void a_seed_gives_the_same_laps_and_another_seed_others() {
        DrivenStint first = drive(STABLE, DriverStyle.good(), 2, 2, 5L);
        DrivenStint again = drive(STABLE, DriverStyle.good(), 2, 2, 5L);
        DrivenStint other = drive(STABLE, DriverStyle.good(), 2, 2, 6L);
        assertThat(again.lapsS()).isEqualTo(first.lapsS());
        for (Signal signal : Signal.values()) {
            assertThat(again.history().column(signal))
                    .as(signal.name())
                    .containsExactly(first.history().column(signal));
        }
        assertThat(other.lapsS()).isNotEqualTo(first.lapsS());
    }

    @Test
    void a_good_driver_laps_steadily_near_the_line_and_an_untidy_one_does_not() {
        DrivenStint steady = drive(STABLE, DriverStyle.good(), 6, 8, 3L);
        assertThat(steady.lost()).isEmpty();
        assertThat(deviation(steady.lapsS())).isBetween(0.0005, 0.008);
        for (int i = 0; i < steady.history().count(); i++) {
            assertThat(Math.abs(steady.history().at(Signal.OFFSET, i))).isLessThan(8.0);
        }
        DriverStyle untidy =
                DriverStyle.good().withScatter(DriverScatter.steady().times(5.0));
        DrivenStint loose = drive(STABLE, untidy, 6, 8, 3L);
        assertThat(deviation(loose.lapsS())).isGreaterThan(1.5 * deviation(steady.lapsS()));
    }

    @Test
    void laps_add_up_to_the_history_and_stations_to_the_lap() {
        DrivenStint stint = drive(STABLE, DriverStyle.good(), 2, 2, 4L);
        double driven = stint.lapsS().stream().mapToDouble(Double::doubleValue).sum();
        DriveHistory history = stint.history();
        // one second goes on after the last crossing
        assertThat(history.count() * history.stepS()).isCloseTo(driven + 1.0, within(0.02));
        int crossings = 0;
        for (int i = 1; i < history.count(); i++) {
            double moved = history.at(Signal.STATION, i) - history.at(Signal.STATION, i - 1);
            crossings += moved < -0.5 * LINE.lengthM() ? 1 : 0;
        }
        assertThat(crossings).isEqualTo(stint.lapsS().size());
        assertThat(history.at(Signal.LAP, 0)).isEqualTo(1.0);
    }

    @Test
    void one_pedal_at_a_time_within_their_range() {
        DriveHistory history = drive(STABLE, DriverStyle.good(), 1, 2, 1L).history();
        for (int i = 0; i < history.count(); i++) {
            double throttle = history.at(Signal.THROTTLE, i);
            double brake = history.at(Signal.BRAKE, i);
            assertThat(throttle).isBetween(0.0, 1.0);
            assertThat(brake).isBetween(0.0, 1.0);
            // a foot that changes over may cross for a moment
            assertThat(Math.min(throttle, brake)).isLessThan(0.2);
        }
    }

    @Test
    void who_learns_the_car_gets_quicker() {
        double green = drive(STABLE, DriverStyle.good().withScatter(DriverScatter.NONE), 2, 0, 1L)
                .meanFlyingS();
        double learnt = drive(STABLE, DriverStyle.good().withScatter(DriverScatter.NONE), 2, 12, 1L)
                .meanFlyingS();
        assertThat(learnt).isLessThan(0.985 * green);
    }

    /** A car that is loose at the rear: the same slides, four ways to meet them. */
    @Test
    void reactions_to_a_sliding_rear_show_in_the_hands_and_feet() {
        CarModel loose = car(-0.01, List.of());
        for (Reaction reaction : List.of(Reaction.HOLD, Reaction.CORRECT, Reaction.LIFT)) {
            DriverStyle style = DriverStyle.good().withReactions(reaction, Reaction.NONE);
            List<DriverEvent> events = new ArrayList<>();
            for (long seed = 1; seed <= 2; seed++) {
                DrivenStint stint = drive(loose, style, 3, 10, seed);
                events.addAll(stint.events());
                if (reaction == Reaction.HOLD) {
                    stint.events().forEach(event -> assertHeld(stint.history(), event));
                }
            }
            assertThat(events).as(reaction.name()).isNotEmpty();
            assertThat(events).allMatch(event -> event.rear() && event.reaction() == reaction);
        }
    }

    private static void assertHeld(DriveHistory history, DriverEvent event) {
        double hands = 3.0 / DriverStyle.good().handsRadPerS();
        int from = (int) ((event.fromS() + hands) / history.stepS());
        int to = (int) (event.toS() / history.stepS());
        for (int i = from; i < Math.min(to, history.count()); i++) {
            double rate = (history.at(Signal.STEER, i) - history.at(Signal.STEER, i - 1)) / history.stepS();
            assertThat(Math.abs(rate)).isLessThan(0.15);
        }
    }

    @Test
    void a_pushing_car_is_met_with_more_lock_by_those_who_do() {
        CarModel pushing = car(-0.15, List.of());
        DriverStyle style = DriverStyle.good().withReactions(Reaction.CORRECT, Reaction.WIND_ON);
        assertThat(drive(pushing, style.withEffort(0.985), 3, 12, 2L).events())
                .anyMatch(event -> !event.rear() && event.reaction() == Reaction.WIND_ON);
    }

    @Test
    void fuel_that_burns_makes_the_car_lighter_and_quicker() {
        StintPlan heavy = new StintPlan(
                LINE,
                RoadBumps.NONE,
                STABLE,
                RunningGear.usual(),
                TyreCondition.STEADY,
                new Tank(30.0, 0.002),
                DriverStyle.good().withScatter(DriverScatter.NONE),
                2,
                6,
                1L);
        DrivenStint stint = StintSimulator.drive(heavy);
        DriveHistory history = stint.history();
        double left = history.at(Signal.FUEL, history.count() - 1);
        double lap = LINE.lengthM() * 0.002;
        assertThat(left).isCloseTo(30.0 - 3.0 * lap, within(0.3));
        assertThat(stint.lapsS().get(2)).isLessThan(stint.lapsS().get(1));
    }

    @Test
    void a_bump_shakes_the_car_where_it_lies() {
        RoadBumps bump = station ->
                station > 150.0 && station < 153.0 ? 0.02 * Math.sin(Math.PI * (station - 150.0) / 3.0) : 0.0;
        StintPlan plan = new StintPlan(
                LINE,
                bump,
                STABLE,
                RunningGear.usual(),
                TyreCondition.STEADY,
                Tank.CONSTANT,
                DriverStyle.good().withScatter(DriverScatter.NONE),
                1,
                3,
                1L);
        DriveHistory history = StintSimulator.drive(plan).history();
        double over = 0.0;
        double elsewhere = 0.0;
        for (int i = 0; i < history.count(); i++) {
            double station = history.at(Signal.STATION, i);
            double shake = Math.abs(history.at(Signal.VERTICAL_ACCELERATION, i));
            boolean near = station > 145.0 && station < 175.0;
            over = near ? Math.max(over, shake) : over;
            elsewhere = station > 200.0 ? Math.max(elsewhere, shake) : elsewhere;
        }
        assertThat(over).isGreaterThan(2.0 * elsewhere).isGreaterThan(3.0);
    }
}
