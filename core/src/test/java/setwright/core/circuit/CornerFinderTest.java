package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Corner.Direction;

class CornerFinderTest {
    @Test
    void an_oval_has_two_corners_with_apexes_in_their_middle() {
        Shape oval = Shape.oval(500.0, 100.0);
        List<Corner> corners = corners(new Laps(oval, 1));
        double bend = Math.PI * 100.0 + 40.0;
        assertThat(corners).hasSize(2).allMatch(c -> c.direction() == Direction.LEFT);
        assertThat(corners.get(0).apexM()).isCloseTo(500.0 + 0.5 * bend, within(10.0));
        assertThat(corners.get(1).apexM()).isCloseTo(1000.0 + 1.5 * bend, within(10.0));
    }

    @Test
    void a_change_of_direction_parts_a_chicane() {
        assertThat(corners(new Laps(Shape.road(), 2)).stream().map(Corner::direction))
                .containsExactly(
                        Direction.LEFT,
                        Direction.RIGHT,
                        Direction.LEFT,
                        Direction.LEFT,
                        Direction.RIGHT,
                        Direction.LEFT,
                        Direction.RIGHT,
                        Direction.LEFT,
                        Direction.LEFT,
                        Direction.RIGHT);
    }

    @Test
    void a_double_apex_is_one_corner() {
        Shape shape = new Shape.Pieces()
                .straight(400.0)
                .bend(90.0, 50.0, 15.0)
                .bend(90.0, 50.0, 15.0)
                .twice()
                .shape();
        assertThat(corners(new Laps(shape, 3))).hasSize(2);
    }

    @Test
    void two_bends_with_a_straight_between_are_two_corners() {
        Shape shape = new Shape.Pieces()
                .straight(300.0)
                .bend(90.0, 50.0, 20.0)
                .straight(150.0)
                .bend(90.0, 50.0, 20.0)
                .twice()
                .shape();
        assertThat(corners(new Laps(shape, 4))).hasSize(4);
    }

    @Test
    void a_fast_bend_at_the_limit_counts_and_a_slight_kink_does_not() {
        Shape fast = new Shape.Pieces()
                .straight(300.0)
                .bend(40.0, 330.0, 40.0)
                .straight(300.0)
                .bend(140.0, 60.0, 30.0)
                .twice()
                .shape();
        assertThat(corners(new Laps(fast, 5).grip(13.0, 62.0))).hasSize(4);
        Shape slight = new Shape.Pieces()
                .straight(300.0)
                .bend(8.0, 900.0, 40.0)
                .straight(300.0)
                .bend(172.0, 60.0, 30.0)
                .twice()
                .shape();
        assertThat(corners(new Laps(slight, 5).grip(13.0, 62.0))).hasSize(2);
    }

    @Test
    void a_corner_on_the_start_line_is_numbered_by_its_apex() {
        Shape oval = Shape.oval(500.0, 100.0);
        double length = oval.length();
        double bend = Math.PI * 100.0 + 40.0;
        Shape moved = oval.startedAt(500.0 + 0.5 * bend - 30.0);
        List<Corner> corners = corners(new Laps(moved, 6));
        assertThat(corners).hasSize(2);
        assertThat(corners.get(0).apexM()).isCloseTo(30.0, within(10.0));
        assertThat(corners.get(0).startM()).isNegative();
        Shape before = oval.startedAt(500.0 + 0.5 * bend + 30.0);
        Corner last = corners(new Laps(before, 6)).get(1);
        assertThat(last.apexM()).isCloseTo(length - 30.0, within(10.0));
        assertThat(last.endM()).isGreaterThan(length);
    }

    @Test
    void the_approach_holds_the_braking_and_ends_after_the_corner_before() {
        Laps.Driven driven = new Laps(Shape.road(), 7).drive();
        List<Corner> corners = StintBuilder.build(driven.recording()).circuit().corners();
        for (int k = 0; k < corners.size(); k++) {
            Corner corner = corners.get(k);
            int fastest = fastestBefore(driven.speed(), corner.apexM());
            double previous = k > 0 ? corners.get(k - 1).turnOutM() : Double.NEGATIVE_INFINITY;
            assertThat(corner.startM())
                    .isLessThanOrEqualTo(Math.max(fastest * Shape.STEP_M, previous + 3.0))
                    .isGreaterThanOrEqualTo(previous - 1e-6);
        }
    }

    private static int fastestBefore(double[] speed, double station) {
        int node = (int) (station / Shape.STEP_M);
        while (node > 0 && speed[node - 1] >= speed[node]) {
            node--;
        }
        return node;
    }

    @Test
    void one_speed_per_node_is_needed() {
        ReferenceLine line = new ReferenceLine(1.0, new double[9], new double[9], new double[9], new double[9]);
        assertThatThrownBy(() -> CornerFinder.find(line, new double[8], 0.0))
                .hasMessageContaining("one speed per node");
    }

    @Test
    void a_line_without_bends_has_no_corners() {
        double[] speed = new double[50];
        java.util.Arrays.fill(speed, 30.0);
        ReferenceLine line = new ReferenceLine(2.0, new double[50], new double[50], new double[50], new double[50]);
        assertThat(CornerFinder.find(line, speed, 0.0)).isEmpty();
    }

    private static List<Corner> corners(Laps laps) {
        return StintBuilder.build(laps.drive().recording()).circuit().corners();
    }
}
