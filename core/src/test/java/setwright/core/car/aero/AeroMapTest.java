package setwright.core.car.aero;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class AeroMapTest {
    private static final double ROUNDING = 1.0e-9;
    private static final double DENSITY = 1.2;

    private final AeroMap map = new AeroMap(1.0, 1.5, 0.9, 0.05, 0.08, 0.5, 0.25, 0.1, DENSITY);

    @Test
    void forcesAtTheReferenceAreAreasTimesDynamicPressure() {
        double pressure = 0.5 * DENSITY * 50.0 * 50.0;
        assertThat(map.frontN(50.0, 0.0, 0.0)).isCloseTo(1.0 * pressure, within(ROUNDING));
        assertThat(map.rearN(50.0, 0.0, 0.0)).isCloseTo(1.5 * pressure, within(ROUNDING));
        assertThat(map.dragN(50.0)).isCloseTo(0.9 * pressure, within(ROUNDING));
    }

    @Test
    void forcesGrowWithTheSquareOfTheSpeedAtAnyRideHeight() {
        assertThat(map.frontN(60.0, -0.01, 0.005)).isCloseTo(4.0 * map.frontN(30.0, -0.01, 0.005), within(ROUNDING));
        assertThat(map.rearN(60.0, -0.01, 0.005)).isCloseTo(4.0 * map.rearN(30.0, -0.01, 0.005), within(ROUNDING));
        assertThat(map.dragN(60.0)).isCloseTo(4.0 * map.dragN(30.0), within(ROUNDING));
    }

    @Test
    void theGroundShareGrowsWithTheInverseOfTheGap() {
        // 0.05 m to 0.04 m: half of the downforce grows by a quarter
        assertThat(map.frontN(40.0, -0.01, 0.0)).isCloseTo(1.125 * map.frontN(40.0, 0.0, 0.0), within(ROUNDING));
    }

    @Test
    void downforceStopsGrowingWhereTheFlowStalls() {
        double atStall = map.frontN(40.0, -0.4 * 0.05, 0.0);
        assertThat(map.frontN(40.0, -0.39 * 0.05, 0.0)).isLessThan(atStall);
        assertThat(map.frontN(40.0, -0.9 * 0.05, 0.0)).isEqualTo(atStall);
    }

    @Test
    void rakeMovesDownforceForwardAndKeepsTheTotal() {
        AeroMap noGround = new AeroMap(1.0, 1.5, 0.9, 0.05, 0.08, 0.0, 0.0, 0.1, DENSITY);
        double total = noGround.frontN(50.0, 0.0, 0.0) + noGround.rearN(50.0, 0.0, 0.0);
        assertThat(noGround.frontN(50.0, 0.0, 0.02)).isGreaterThan(noGround.frontN(50.0, 0.0, 0.0));
        assertThat(noGround.frontN(50.0, 0.0, 0.02) + noGround.rearN(50.0, 0.0, 0.02))
                .isCloseTo(total, within(ROUNDING));
    }
}
