package setwright.core.simulation.layout.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.layout.CircuitElement;
import setwright.core.simulation.layout.CircuitElement.Bend;
import setwright.core.simulation.layout.CircuitElement.Straight;
import setwright.core.simulation.layout.CircuitPlan;

/** The drawn clothoid against tabled Fresnel integrals. */
final class ClothoidTest {

    /**
     * Fresnel integrals C(1) = 0.7798934, S(1) = 0.4382591 (Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.7): a
     * clothoid whose curvature grows as {@code pi s / a^2} ends after the length {@code a} at {@code a C(1), a S(1)}, turned
     * by a right angle.
     */
    @Test
    void aClothoidEndsWhereFresnelIntegralsSay() {
        double a = 100.0;
        double radius = a / Math.PI;
        CircuitElement bend = new Bend(radius, Math.PI, a, a);
        CircuitPlan plan = CircuitPlan.of(
                "stadium",
                List.of(new Straight(100.0), bend, new Straight(200.0), bend, new Straight(100.0)),
                List.of());
        // the first straight keeps its length, because the drawing closes by symmetry
        assertThat(plan.elements().get(0).lengthM()).isCloseTo(100.0, within(1.0e-6));
        ReferenceLine line = plan.line(1.0);
        assertThat(line.stepM()).isCloseTo(1.0, within(1.0e-9));
        assertThat(line.x(200)).isCloseTo(100.0 + 77.98934, within(1.0e-5));
        assertThat(line.y(200)).isCloseTo(43.82591, within(1.0e-5));
        assertThat(line.heading(200)).isCloseTo(0.5 * Math.PI, within(1.0e-9));
    }
}
