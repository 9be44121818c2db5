package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.correlation.Covariance;
import org.junit.jupiter.api.Test;
import setwright.core.handling.Phase;

/** Draws have the mean, the spread and the common part that they are said to have; sample moments from a library. */
final class JointLevelsTest {
    private static final int DRAWS = 40_000;

    private static BelievedLevel level(Phase phase, SpeedRange speed, double rad, double deviation) {
        return new BelievedLevel(phase, speed, rad, deviation, rad);
    }

    private static double[][] draws(JointLevels joint) {
        Random random = new Random(5);
        double[][] rows = new double[DRAWS][];
        for (int i = 0; i < DRAWS; i++) {
            rows[i] = joint.draw(random);
        }
        return rows;
    }

    @Test
    void aRootGivesItsCovariance() {
        double[][] root = {{0.3, 0.0}, {0.2, 0.1}};
        List<BelievedLevel> levels = List.of(
                level(Phase.MID, SpeedRange.ALL, 0.4, 0.3),
                level(Phase.EXIT, SpeedRange.ALL, -0.2, Math.hypot(0.2, 0.1)));
        double[][] rows = draws(JointLevels.of(levels, root));
        RealMatrix found = new Covariance(rows).getCovarianceMatrix();
        assertThat(found.getEntry(0, 0)).isCloseTo(0.09, within(0.003));
        assertThat(found.getEntry(0, 1)).isCloseTo(0.06, within(0.003));
        assertThat(found.getEntry(1, 1)).isCloseTo(0.05, within(0.003));
        double sum = 0.0;
        for (double[] row : rows) {
            sum += row[1];
        }
        assertThat(sum / DRAWS).isCloseTo(-0.2, within(0.005));
    }

    /** Slow and fast corners share half of their variance; all corners lie between; another phase shares nothing. */
    @Test
    void whatIsMeasuredApartGoesTogetherInPart() {
        List<BelievedLevel> levels = List.of(
                level(Phase.MID, SpeedRange.LOW, 0.0, 1.0),
                level(Phase.MID, SpeedRange.HIGH, 0.0, 2.0),
                level(Phase.MID, SpeedRange.ALL, 0.0, 1.0),
                level(Phase.EXIT, SpeedRange.ALL, 0.0, 1.0));
        RealMatrix found = new Covariance(draws(JointLevels.measured(levels))).getCovarianceMatrix();
        assertThat(found.getEntry(0, 0)).isCloseTo(1.0, within(0.03));
        assertThat(found.getEntry(1, 1)).isCloseTo(4.0, within(0.12));
        assertThat(found.getEntry(2, 2)).isCloseTo(1.0, within(0.03));
        assertThat(found.getEntry(0, 1)).isCloseTo(1.0, within(0.06)); // half of 1 times 2
        assertThat(found.getEntry(0, 2)).isCloseTo(Math.sqrt(0.75), within(0.03));
        assertThat(found.getEntry(0, 3)).isCloseTo(0.0, within(0.03));
        assertThat(found.getEntry(2, 3)).isCloseTo(0.0, within(0.03));
    }
}
