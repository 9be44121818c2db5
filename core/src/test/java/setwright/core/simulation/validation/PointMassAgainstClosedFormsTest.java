package setwright.core.simulation.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.Loops;
import setwright.core.limit.PointMassEnvelope;
import setwright.core.limit.QuasiSteadyLap;
import setwright.core.limit.Station;

/**
 * Laps of a point mass against sums that can be done by hand. Car of the circle and braking cases: mass, drag and downforce of B. Lenzo
 * and V. Rossi, "A simple mono-dimensional approach for lap time optimisation", Applied Sciences 10(4), 1498, 2020; the friction is ours.
 */
final class PointMassAgainstClosedFormsTest {
    private static final double GRAVITY = 9.80665;
    private static final double CRAWL_MPS = 1.0;

    /** v² = mu m g / (m / R - mu k_z), and with drag taken from the friction circle. */
    @ParameterizedTest
    @CsvSource({
        "1.0, 50, 24.360, 24.335",
        "1.0, 100, 38.753, 38.555",
        "1.0, 200, 80.014, 76.751",
        "1.5, 50, 31.534, 31.498",
        "1.5, 100, 55.377, 54.994",
        // here the engine limits: (P / k_x)^(1/3)
        "1.5, 200, 150.0, 91.413"
    })
    void speedOnACircle(double friction, double radius, double withoutDrag, double withDrag) {
        QuasiSteadyLap free =
                circle(new PointMassEnvelope(620.0, friction, Double.POSITIVE_INFINITY, 0.0, 2.15), radius);
        QuasiSteadyLap dragged = circle(new PointMassEnvelope(620.0, friction, 550.0e3, 0.72, 2.15), radius);
        assertThat(free.lowestMps()).isCloseTo(withoutDrag, within(1e-3 * withoutDrag));
        assertThat(dragged.lowestMps()).isCloseTo(withDrag, within(1e-3 * withDrag));
        assertThat(dragged.highestMps()).isCloseTo(withDrag, within(1e-3 * withDrag));
    }

    /** 0.5 rho C_D A v³ + c_rr m g v = P. */
    @ParameterizedTest
    @CsvSource({"100e3, 0.65, 1300, 1.225, 61.065", "550e3, 1.2, 720, 1.225, 90.364", "300e3, 0.9, 1200, 1.112, 83.205"
    })
    void topSpeed(double power, double area, double mass, double density, double expected) {
        PointMassEnvelope car = new PointMassEnvelope(mass, 1.5, power, 0.5 * density * area, 0.0, 0.012);
        assertThat(car.topSpeedMps()).isCloseTo(expected, within(1e-4 * expected));
        assertThat(LapSimulator.lap(car, new double[2000], 10.0).lowestMps())
                .isCloseTo(expected, within(1e-4 * expected));
    }

    /** Constant power from rest: v = sqrt(2 P t / m), s = (2/3) v t. 1000 kg, 100 kW, 30 m/s: 4.5 s, 90 m. */
    @Test
    void accelerationAtConstantPower() {
        double friction = 100.0;
        PointMassEnvelope car = new PointMassEnvelope(1000.0, friction, 100.0e3, 0.0, 0.0);
        double crawl = friction * GRAVITY / (CRAWL_MPS * CRAWL_MPS);
        QuasiSteadyLap lap = LapSimulator.lap(car, Loops.afterCrawl(crawl, 0.0, 40000), 0.01);
        double start = lap.stations().get(0).speedMps();
        Station thirty = first(lap, 30.0);
        // what the car had done before it came to the crawl
        double timeBefore = 1000.0 * start * start / (2.0 * 100.0e3);
        double wayBefore = 1000.0 * Math.pow(start, 3) / (3.0 * 100.0e3);
        assertThat(lap.timeS(0.0, thirty.stationM()) + timeBefore).isCloseTo(4.5, within(0.01));
        assertThat(thirty.stationM() + wayBefore).isCloseTo(90.0, within(0.1));
    }

    /** s = ln((A + c v0²) / (A + c v1²)) / (2 c), A = mu g, c = (mu k_z + k_x) / m: 91.692 m and 2.0766 s from 80 to 20 m/s. */
    @Test
    void brakingWithDownforce() {
        PointMassEnvelope car = new PointMassEnvelope(620.0, 1.5, 5.0e6, 0.72, 2.15);
        QuasiSteadyLap lap = LapSimulator.lap(car, Loops.afterCrawl(0.2, 0.0, 10000), 0.1);
        List<Station> stations = lap.stations();
        double from = Double.NaN;
        double to = Double.NaN;
        for (int i = 0; i + 1 < stations.size(); i++) {
            double here = stations.get(i).speedMps();
            double next = stations.get(i + 1).speedMps();
            if (here >= 80.0 && next < 80.0) {
                from = stations.get(i).stationM() + 0.1 * (here - 80.0) / (here - next);
            }
            if (here >= 20.0 && next < 20.0) {
                to = stations.get(i).stationM() + 0.1 * (here - 20.0) / (here - next);
            }
        }
        assertThat(to - from).isCloseTo(91.692, within(0.09));
        assertThat(lap.timeS(from, to)).isCloseTo(2.0766, within(0.002));
        assertThat(-car.brakingMps2(80.0, 0.0) / GRAVITY).isCloseTo(5.651, within(0.006));
    }

    /** Two straights of 500 m and two half circles of 50 m, mu 1, no drag, unlimited power: 35.105 s. */
    @Test
    void lapOfAStadium() {
        PointMassEnvelope car = new PointMassEnvelope(1000.0, 1.0, Double.POSITIVE_INFINITY, 0.0, 0.0);
        QuasiSteadyLap lap = LapSimulator.lap(car, Loops.stadium(500.0, 50.0, 0.25), 0.25);
        assertThat(lap.timeS()).isCloseTo(35.105, withPercentage(0.1));
        assertThat(lap.lowestMps()).isCloseTo(22.147, withPercentage(0.02));
        assertThat(lap.highestMps()).isCloseTo(73.454, withPercentage(0.1));
    }

    /** On a circle from rest, sin(2 s / R) = v² / (R A): at the limit after 45 degrees, in 1.31103 sqrt(R / A). */
    @Test
    void speedBuildsUpOnACircle() {
        double radius = 50.0;
        PointMassEnvelope car = new PointMassEnvelope(1000.0, 1.0, Double.POSITIVE_INFINITY, 0.0, 0.0);
        double step = 0.002;
        QuasiSteadyLap lap = LapSimulator.lap(car, Loops.afterCrawl(GRAVITY / CRAWL_MPS, 1.0 / radius, 50000), step);
        double limit = Math.sqrt(GRAVITY * radius);
        double start = lap.stations().get(0).speedMps();
        double before = 0.5 * radius * Math.asin(start * start / (radius * GRAVITY));
        for (double arc = 5.0; arc < 38.0; arc += 3.0) {
            double speed = lap.stations().get((int) Math.round(arc / step)).speedMps();
            assertThat(speed * speed)
                    .isCloseTo(radius * GRAVITY * Math.sin(2.0 * (arc + before) / radius), withPercentage(0.2));
        }
        double end = 0.25 * Math.PI * radius - before;
        assertThat(lap.stations().get((int) Math.round(end / step)).speedMps()).isCloseTo(limit, withPercentage(0.2));
        assertThat(lap.timeS(0.0, end) + start / GRAVITY)
                .isCloseTo(1.31103 * Math.sqrt(radius / GRAVITY), withPercentage(0.2));
    }

    private static QuasiSteadyLap circle(PointMassEnvelope car, double radius) {
        int nodes = 400;
        double[] curvature = new double[nodes];
        Arrays.fill(curvature, 1.0 / radius);
        return LapSimulator.lap(car, curvature, 2.0 * Math.PI * radius / nodes);
    }

    private static Station first(QuasiSteadyLap lap, double speed) {
        return lap.stations().stream()
                .filter(station -> station.speedMps() >= speed)
                .findFirst()
                .orElseThrow();
    }
}
