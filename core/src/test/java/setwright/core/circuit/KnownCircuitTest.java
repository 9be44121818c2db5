package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

class KnownCircuitTest {
    /** Not symmetric, so that its shape fits in one way only. */
    private static final Shape ROAD = Shape.island();

    private static final Circuit KNOWN =
            StintBuilder.build(new Laps(ROAD, 1).drive().recording()).circuit();

    private static Laps.Driven other() {
        return new Laps(ROAD, 2).from(700.0, 200.0).drive();
    }

    @Test
    void the_circuit_is_kept_and_stations_are_on_it() {
        Laps.Driven driven = other();
        Stint stint = StintBuilder.build(driven.recording(), KNOWN);
        assertThat(stint.circuit()).isSameAs(KNOWN);
        assertStations(stint, driven, 3.0);
    }

    @Test
    void without_marks_laps_begin_at_the_known_line() {
        Laps.Driven driven = other();
        Stint stint = StintBuilder.build(driven.unmarked(), KNOWN);
        assertStations(stint, driven, 3.0);
        assertThat(stint.goodLaps()).hasSizeGreaterThanOrEqualTo(5);
        assertThat(stint.laps().get(1).timeS()).isCloseTo(driven.lapTime(0), within(0.05));
    }

    @Test
    void another_plane_is_matched_by_shape_and_positions_are_moved_onto_the_line() {
        Laps.Driven driven = new Laps(ROAD, 3).placed(1.0, 5_000.0, 900.0).drive();
        Stint stint = StintBuilder.build(driven.recording(), KNOWN);
        assertStations(stint, driven, 8.0);
        int sample = 500;
        int node = (int) (stint.station().get(sample) / KNOWN.line().stepM());
        assertThat(stint.recording().channel(Quantity.POSITION_X).get(sample))
                .isCloseTo(KNOWN.line().x(node), within(10.0));
        assertThat(stint.recording().channel(Quantity.POSITION_Y).get(sample))
                .isCloseTo(KNOWN.line().y(node), within(10.0));
    }

    @Test
    void without_position_and_marks_the_shape_alone_is_enough() {
        Laps.Driven driven = other();
        Stint stint = StintBuilder.build(
                driven.without(
                        Quantity.POSITION_X,
                        Quantity.POSITION_Y,
                        Quantity.LAP_NUMBER,
                        Quantity.LAP_TRIGGER,
                        Quantity.LAP_DISTANCE),
                KNOWN);
        assertStations(stint, driven, 10.0);
    }

    @Test
    void one_lap_is_enough_on_a_known_circuit() {
        Laps.Driven driven = new Laps(ROAD, 4).count(2).drive();
        assertThat(StintBuilder.build(driven.recording(), KNOWN).laps()).hasSize(2);
    }

    @Test
    void another_circuit_is_refused_with_figures() {
        Recording recording = new Laps(Shape.road(), 5).drive().recording();
        assertThatThrownBy(() -> StintBuilder.build(recording, KNOWN))
                .isInstanceOf(OtherCircuit.class)
                .hasMessageContaining("does not fit")
                .hasMessageContaining("correlates");
    }

    @Test
    void data_of_a_circuit_give_it_back() {
        Circuit again = CircuitData.of(KNOWN).circuit();
        assertThat(again.corners()).isEqualTo(KNOWN.corners());
        assertThat(again.anchor()).isEqualTo(KNOWN.anchor());
        assertThat(again.line().lengthM()).isEqualTo(KNOWN.line().lengthM());
        assertThat(again.line().curvatureAt(123.4)).isEqualTo(KNOWN.line().curvatureAt(123.4));
    }

    private static void assertStations(Stint stint, Laps.Driven driven, double tolerance) {
        double length = ROAD.length();
        double scale = length / stint.circuit().line().lengthM();
        Channel truth = driven.recording().channel(Quantity.LAP_DISTANCE);
        for (int i = 0; i < truth.size(); i++) {
            double difference = Math.abs(stint.station().get(i) * scale - truth.get(i));
            assertThat(Math.min(difference, length - difference)).isLessThan(tolerance);
        }
    }
}
