package setwright.core.simulation.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.layout.CircuitElement.Bend;
import setwright.core.simulation.layout.CircuitElement.Straight;

final class CircuitPlanTest {
    private static final double RIGHT_ANGLE = 0.5 * Math.PI;

    private static CircuitElement left(double radius, double angle) {
        return new Bend(radius, angle, 0.4 * radius, 0.6 * radius);
    }

    private static List<CircuitElement> rectangle(double first, double third) {
        return List.of(
                new Straight(0.6 * first),
                left(40.0, RIGHT_ANGLE),
                new Straight(200.0),
                left(60.0, RIGHT_ANGLE),
                new Straight(third),
                left(40.0, RIGHT_ANGLE),
                new Straight(200.0),
                left(60.0, RIGHT_ANGLE),
                new Straight(0.4 * first));
    }

    @Test
    void aDrawingThatMissesByMetresIsClosed() {
        CircuitPlan plan = CircuitPlan.of("test", rectangle(500.0, 470.0), List.of());
        assertThat(plan.gapM()).isLessThan(1.0e-6);
        assertThat(plan.turns()).isEqualTo(1);
        assertThat(plan.elements().get(0).lengthM()).isBetween(270.0, 300.0);
    }

    @Test
    void aDrawingThatMissesByFarIsRefusedWithTheGap() {
        assertThatThrownBy(() -> CircuitPlan.of("test", rectangle(2000.0, 200.0), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("circuit test does not close")
                .hasMessageContaining(" m beside its beginning")
                .hasMessageContaining("would have to");
    }

    @Test
    void clothoidsThatTurnFurtherThanTheBendAreRefused() {
        assertThatThrownBy(() -> new Bend(50.0, 0.2, 20.0, 20.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shorten them to 20.0 m together");
    }

    @Test
    void aFigureEightTurnsNotAtAll() {
        double angle = 1.5 * Math.PI;
        List<CircuitElement> eight = List.of(
                new Straight(80.0),
                left(100.0, angle),
                new Straight(158.0),
                new Bend(100.0, -angle, 40.0, 60.0),
                new Straight(76.0));
        CircuitPlan plan = CircuitPlan.of("eight", eight, List.of());
        assertThat(plan.turns()).isZero();
        assertThat(plan.gapM()).isLessThan(1.0e-6);
    }

    @Test
    void aBumpBeyondTheEndIsRefused() {
        Bump bump = new Bump(5000.0, 4.0, 0.01, Bump.Wheels.BOTH);
        assertThatThrownBy(() -> CircuitPlan.of("test", rectangle(500.0, 500.0), List.of(bump)))
                .hasMessageContaining("lies beyond its end");
    }

    @Test
    void aBumpRisesUnderItsWheelsOnlyAndRunsRoundTheLap() {
        double length =
                CircuitPlan.of("test", rectangle(500.0, 500.0), List.of()).lengthM();
        Bump bump = new Bump(length - 2.0, 8.0, 0.01, Bump.Wheels.LEFT);
        CircuitPlan plan = CircuitPlan.of("test", rectangle(500.0, 500.0), List.of(bump));
        assertThat(plan.roadHeight(2.0, true)).isCloseTo(0.01, within(1.0e-9));
        assertThat(plan.roadHeight(0.0, true)).isCloseTo(0.005, within(1.0e-9));
        assertThat(plan.roadHeight(2.0, false)).isZero();
        assertThat(plan.roadHeight(7.0, true)).isZero();
        double difference = bump.heightAt(1.0 + 1.0e-5, length) - bump.heightAt(1.0 - 1.0e-5, length);
        assertThat(bump.slopeAt(1.0, length)).isCloseTo(difference / 2.0e-5, within(1.0e-7));
    }

    @Test
    void randomPlansCloseAndAreOnePieceWithContinuousCurvature() {
        for (long seed = 1; seed <= 60; seed++) {
            CircuitPlan plan = CircuitPlan.random(seed);
            String which = "seed " + seed;
            assertThat(plan.gapM()).as(which).isLessThan(1.0e-3);
            assertThat(Math.abs(plan.turns())).as(which).isEqualTo(1);
            assertThat(plan.lengthM()).as(which).isBetween(2250.0, 6500.0);
            long bends = plan.elements().stream().filter(Bend.class::isInstance).count();
            assertThat(bends).as(which).isBetween(8L, 16L);
            isOnePiece(plan.line(2.0), which);
        }
    }

    private static void isOnePiece(ReferenceLine line, String which) {
        double step = line.stepM();
        int count = line.nodeCount();
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % count;
            double chord = Math.hypot(line.x(next) - line.x(i), line.y(next) - line.y(i));
            // an arc is longer than its chord by (k s)^2 / 24; the tightest radius is 15 m
            assertThat(chord)
                    .as(which + ", node " + i)
                    .isBetween(step * (1.0 - step * step / (24.0 * 200.0)), step * 1.000001);
            // the quickest clothoid of a random plan: 1/15 m within 0.3 * 15 m * 1 rad
            assertThat(Math.abs(line.curvature(next) - line.curvature(i)))
                    .as(which + ", node " + i)
                    .isLessThan(step / (15.0 * 4.5));
        }
        double turned = line.heading(count - 1) - line.heading(0) + step * line.curvature(count - 1);
        assertThat(Math.abs(turned)).as(which).isCloseTo(2.0 * Math.PI, within(0.01));
    }

    @Test
    void theSameSeedGivesTheSameCircuitAndAnotherSeedAnother() {
        CircuitPlan one = CircuitPlan.random(7);
        assertThat(CircuitPlan.random(7).elements()).isEqualTo(one.elements());
        assertThat(CircuitPlan.random(7).bumps()).isEqualTo(one.bumps());
        assertThat(CircuitPlan.random(8).elements()).isNotEqualTo(one.elements());
    }
}
