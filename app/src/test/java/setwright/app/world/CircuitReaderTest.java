package setwright.app.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.simulation.layout.Bump;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.intake.problem.InputProblem;

final class CircuitReaderTest {
    private static final String RING = """
            line:
              - {straight_m: 150}
              - {bend: left, radius_m: 60, angle_deg: 180, in_m: 40, out_m: 40}
              - {straight_m: 305}
              - {bend: left, radius_m: 60, angle_deg: 180, in_m: 40, out_m: 40}
              - {straight_m: 150}
            bumps:
              - {at_m: 20, length_m: 5, height_mm: 12, wheels: right}
            """;

    @Test
    void aDrawnCircuitIsRead() {
        CircuitPlan plan = CircuitReader.parse("ring", "ring.yaml", RING);
        assertThat(plan.turns()).isEqualTo(1);
        assertThat(plan.bumps()).containsExactly(new Bump(20.0, 5.0, 0.012, Bump.Wheels.RIGHT));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bend: left, radius_m: 60 | bend: up, radius_m: 60 | left or right",
                "straight_m: 150 | straight_m: long | a number",
                "straight_m: 305 | straight_m: 900 | does not close",
                "at_m: 20 | at_m: 9000 | lies beyond its end",
                "in_m: 40 | in_m: 400 | shorten them",
                "radius_m | radius | Did you mean 'radius_m'",
            })
    void whatCannotBeDrivenIsRefusedWithTheReason(String text, String wrong, String message) {
        assertThatThrownBy(() -> CircuitReader.parse("ring", "ring.yaml", RING.replace(text, wrong)))
                .isInstanceOf(InputProblem.class)
                .hasMessageStartingWith("ring.yaml, line ")
                .hasMessageContaining(message);
    }
}
