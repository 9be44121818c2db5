package setwright.core.car.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class PowertrainTest {
    private static final double ROUNDING = 1.0e-9;
    private static final double RADIUS_M = 0.3;
    private static final double FINAL = 4.0;
    private static final double[] RATIOS = {3.0, 2.0, 1.5};

    private final Powertrain train = new Powertrain(
            new double[] {100.0, 300.0, 500.0, 700.0},
            new double[] {200.0, 300.0, 280.0, 220.0},
            RATIOS,
            FINAL,
            RADIUS_M,
            650.0,
            600.0,
            0.9);

    @Test
    void torqueIsLinearBetweenPointsAndLevelBeforeTheFirst() {
        assertThat(train.torqueNm(300.0)).isCloseTo(300.0, within(ROUNDING));
        assertThat(train.torqueNm(250.0)).isCloseTo(275.0, within(ROUNDING));
        assertThat(train.torqueNm(600.0)).isCloseTo(250.0, within(ROUNDING));
        assertThat(train.torqueNm(20.0)).isCloseTo(200.0, within(ROUNDING));
    }

    @Test
    void limiterCutsTheTorque() {
        assertThat(train.torqueNm(650.0)).isCloseTo(235.0, within(ROUNDING));
        assertThat(train.torqueNm(650.1)).isZero();
        double topSpeed = train.limitMps(2);
        assertThat(topSpeed).isCloseTo(650.0 * RADIUS_M / (FINAL * 1.5), within(ROUNDING));
        assertThat(train.driveN(1.001 * topSpeed)).isZero();
    }

    @Test
    void driverChangesUpAtTheShiftSpeedAndStaysInTheLastGear() {
        for (int gear = 0; gear < 2; gear++) {
            double shift = 600.0 * RADIUS_M / (FINAL * RATIOS[gear]);
            assertThat(train.drivingGear(0.999 * shift)).isEqualTo(gear);
            assertThat(train.drivingGear(1.001 * shift)).isEqualTo(gear + 1);
        }
        assertThat(train.drivingGear(100.0)).isEqualTo(2);
    }

    @Test
    void driverBrakesInTheLowestGearBelowTheLimiter() {
        double between = 625.0 * RADIUS_M / (FINAL * 3.0);
        assertThat(train.lowestGear(between)).isZero();
        assertThat(train.drivingGear(between)).isEqualTo(1);
    }

    @Test
    void powerAtTheWheelsIsThatOfTheEngineLessTheLosses() {
        for (double speed = 5.0; speed < train.limitMps(2); speed += 3.7) {
            double engine = train.engineRadPerS(train.drivingGear(speed), speed);
            assertThat(train.driveN(speed) * speed).isCloseTo(0.9 * train.torqueNm(engine) * engine, within(1.0e-6));
        }
    }

    @Test
    void aTorqueCurveOfOnePointIsRefused() {
        assertThatThrownBy(() -> new Powertrain(
                        new double[] {100.0}, new double[] {200.0}, RATIOS, FINAL, RADIUS_M, 650.0, 600.0, 0.9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two points");
    }
}
