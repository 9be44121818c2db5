package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.car.tyre.CurveShape;

final class CurveTableTest {
    /** An eighth of the squared step times the greatest bend of the curve, 6.4. */
    private static final double PROMISED = 3.1e-6;

    /** The same with the greatest bend of the slope, 50. */
    private static final double SLOPE = 2.4e-5;

    private final CurveShape shape = MountedTyre.SHAPE;
    private final CurveTable table = new CurveTable(shape);

    @Test
    void followsTheCurveWithinItsPromise() {
        for (double slip = -3.99; slip < 3.99; slip += 0.00071) {
            assertThat(table.share(slip)).as("slip %s", slip).isCloseTo(shape.share(slip), within(PROMISED));
        }
    }

    @Test
    void slopeIsThatOfTheCurve() {
        for (double slip = -3.99; slip < 3.99; slip += 0.00071) {
            assertThat(table.slope(slip)).as("slip %s", slip).isCloseTo(shape.slope(slip), within(SLOPE));
        }
        assertThat(table.initialSlope()).isEqualTo(shape.initialSlope());
    }

    @Test
    void inverseLeadsBackToTheForce() {
        for (double force = 0.0; force <= MountedTyre.HIGHEST_SHARE; force += 0.00037) {
            assertThat(table.share(table.inverse(force)))
                    .as("force %s", force)
                    .isCloseTo(force, within(2.0 * PROMISED));
        }
    }

    @Test
    void farBeyondThePeakTheForceStaysWhereTheTableEnds() {
        assertThat(table.share(9.0)).isCloseTo(shape.share(4.0), within(1.0e-3));
        assertThat(table.share(-9.0)).isEqualTo(-table.share(9.0));
    }
}
