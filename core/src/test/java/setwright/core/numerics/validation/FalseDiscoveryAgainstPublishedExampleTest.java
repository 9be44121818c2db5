package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import setwright.core.numerics.FalseDiscovery;

/**
 * The worked example of Y. Benjamini and Y. Hochberg (1995), section 4: fifteen comparisons of two treatments of the heart. At a level
 * of 0.05 four are named, where Bonferroni's rule names three. P-values from memory.
 */
final class FalseDiscoveryAgainstPublishedExampleTest {
    private static final double[] P_VALUES = {
        0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590,
        1.0000
    };

    @Test
    void namesFour() {
        double[] adjusted = FalseDiscovery.adjusted(P_VALUES);
        assertThat(Arrays.stream(adjusted).filter(p -> p <= 0.05)).hasSize(4);
        assertThat(Arrays.stream(P_VALUES).filter(p -> p <= 0.05 / 15)).hasSize(3);
        // 15 * 0.0095 / 4
        assertThat(adjusted[3]).isCloseTo(0.035_625, within(1.0e-12));
    }

    @Test
    void keepsTheOrderOfTheTests() {
        double[] turned = new double[15];
        Arrays.setAll(turned, i -> P_VALUES[14 - i]);
        double[] adjusted = FalseDiscovery.adjusted(P_VALUES);
        double[] other = FalseDiscovery.adjusted(turned);
        for (int i = 0; i < 15; i++) {
            assertThat(other[14 - i]).isEqualTo(adjusted[i]);
        }
    }
}
