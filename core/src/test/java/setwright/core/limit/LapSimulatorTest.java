package setwright.core.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import setwright.core.car.DrivenAxle;

final class LapSimulatorTest {
    private static Envelope car;
    private static QuasiSteadyLap lap;

    @BeforeAll
    static void drive() {
        car = Envelope.of(LapCars.winged());
        lap = LapSimulator.lap(car, Loops.circuit(2500), 2.0);
    }

    @Test
    void noStationIsBeyondTheEnvelope() {
        for (Station station : lap.stations()) {
            double lateral = Math.abs(station.lateralMps2());
            double speed = station.speedMps();
            assertThat(lateral).isLessThanOrEqualTo(car.corneringMps2(speed) * (1.0 + 1e-6));
            assertThat(station.forwardMps2())
                    .isBetween(car.brakingMps2(speed, lateral) - 1e-6, car.drivingMps2(speed, lateral) + 1e-6);
            assertThat(station.lateralMps2()).isCloseTo(station.curvature() * speed * speed, within(1e-9));
        }
    }

    @Test
    void accelerationsAddUpToTheSpeeds() {
        double worst = 0.0;
        for (int i = 0; i < 2500; i++) {
            Station here = lap.stations().get(i);
            Station next = lap.stations().get((i + 1) % 2500);
            double rise = (Math.pow(next.speedMps(), 2) - Math.pow(here.speedMps(), 2)) / 4.0;
            double low = Math.min(here.forwardMps2(), next.forwardMps2());
            double high = Math.max(here.forwardMps2(), next.forwardMps2());
            worst = Math.max(worst, Math.max(low - rise, rise - high));
        }
        // only where a corner's greatest speed is met within a step
        assertThat(worst).isLessThan(2.5);
    }

    @Test
    void itEndsAsItBeganWhereverItStarts() {
        double[] curvature = Loops.circuit(2500);
        double[] turned = new double[curvature.length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = curvature[(i + 777) % turned.length];
        }
        QuasiSteadyLap other = LapSimulator.lap(car, turned, 2.0);
        assertThat(other.timeS()).isCloseTo(lap.timeS(), within(1e-9));
        assertThat(other.stations().get(0).speedMps())
                .isCloseTo(lap.stations().get(777).speedMps(), within(1e-9));
    }

    @Test
    void leftAndRightAreAlike() {
        double[] curvature = Loops.circuit(2500);
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] = -curvature[i];
        }
        QuasiSteadyLap mirrored = LapSimulator.lap(car, curvature, 2.0);
        assertThat(mirrored.timeS()).isCloseTo(lap.timeS(), within(1e-9));
        assertThat(mirrored.stations().get(150).steerRad())
                .isCloseTo(-lap.stations().get(150).steerRad(), within(1e-12));
        assertThat(mirrored.stations().get(150).balanceRad())
                .isCloseTo(lap.stations().get(150).balanceRad(), within(1e-12));
    }

    @Test
    void sectorsAddUpToTheLapAndMayCrossTheStartLine() {
        double sum = lap.timeS(0.0, 1234.5) + lap.timeS(1234.5, 3000.1) + lap.timeS(3000.1, 5000.0);
        assertThat(sum).isCloseTo(lap.timeS(), within(1e-9));
        assertThat(lap.timeS(4900.0, 5100.0))
                .isCloseTo(lap.timeS(4900.0, 5000.0) + lap.timeS(0.0, 100.0), within(1e-9));
        assertThat(lap.timeS(-100.0, 100.0)).isCloseTo(lap.timeS(4900.0, 5100.0), within(1e-9));
    }

    @Test
    void whereNothingAsksForBrakesTheSpeedIsThatWhichTheEngineHolds() {
        double[] kinks = new double[1000];
        kinks[100] = 1.0 / 900.0;
        kinks[101] = 1.0 / 900.0;
        kinks[600] = -1.0 / 1200.0;
        QuasiSteadyLap flat = LapSimulator.lap(car, kinks, 3.0);
        assertThat(flat.lowestMps()).isBetween(0.99 * car.topSpeedMps(), car.topSpeedMps());
        assertThat(flat.timeShare(LimitedBy.ENGINE)).isGreaterThan(0.95);
        QuasiSteadyLap straight = LapSimulator.lap(car, new double[1000], 3.0);
        assertThat(straight.lowestMps()).isCloseTo(car.topSpeedMps(), within(1e-6));
    }

    @Test
    void energyIsKept() {
        EnergyBalance coarse = lap.energy();
        EnergyBalance fine = LapSimulator.lap(car, Loops.circuit(20000), 0.25).energy();
        assertThat(Math.abs(coarse.restJ())).isLessThan(0.01 * coarse.driveJ());
        assertThat(Math.abs(fine.restJ())).isLessThan(0.002 * fine.driveJ());
        assertThat(fine.scrubJ()).isBetween(0.02 * fine.driveJ(), 0.15 * fine.driveJ());
        assertThat(fine.brakeJ()).isGreaterThan(0.3 * fine.driveJ());
    }

    /** A second-order pass: half the step, about a quarter of the error, and so no time in a finer mesh. */
    @Test
    void aFinerMeshGainsNothing() {
        double finest = LapSimulator.lap(car, Loops.circuit(40000), 0.125).timeS();
        double four = LapSimulator.lap(car, Loops.circuit(1250), 4.0).timeS() - finest;
        double two = lap.timeS() - finest;
        double one = LapSimulator.lap(car, Loops.circuit(5000), 1.0).timeS() - finest;
        assertThat(Math.abs(two)).isLessThan(5e-4 * finest);
        assertThat(Math.abs(one)).isLessThan(2e-4 * finest);
        assertThat(two / four).isBetween(0.15, 0.45);
        assertThat(one / two).isBetween(0.1, 0.45);
    }

    @Test
    void gearsFollowTheSpeed() {
        assertThat(lap.stations())
                .allSatisfy(station -> assertThat(station.gear())
                        .isBetween(1, LapCars.winged().powertrain().gears()));
        Station fastest = lap.stations().stream()
                .max((one, other) -> Double.compare(one.speedMps(), other.speedMps()))
                .orElseThrow();
        Station slowest = lap.stations().stream()
                .min((one, other) -> Double.compare(one.speedMps(), other.speedMps()))
                .orElseThrow();
        assertThat(fastest.gear()).isGreaterThan(slowest.gear());
    }

    @Test
    void aFrontDrivenCarIsHeldByItsFrontAxleOnTheWayOut() {
        Envelope hatch = Envelope.of(LapCars.plain(DrivenAxle.FRONT));
        QuasiSteadyLap round = LapSimulator.lap(hatch, Loops.circuit(2500), 2.0);
        assertThat(round.stations().stream()
                        .filter(station -> station.forwardMps2() > 1.0 && station.limitedBy() != LimitedBy.ENGINE))
                .isNotEmpty()
                .allSatisfy(station -> assertThat(station.limitedBy()).isEqualTo(LimitedBy.FRONT_AXLE));
    }

    @Test
    void whatIsNoLineIsRefused() {
        assertThatThrownBy(() -> LapSimulator.lap(car, new double[4], 2.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LapSimulator.lap(car, new double[100], 0.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LapSimulator.lap(car, Loops.circle(Double.NaN, 100), 2.0))
                .hasMessageContaining("node 0");
    }
}
