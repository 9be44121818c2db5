package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PeriodicSplineTest {
    private static final double PERIOD = 20.0;

    @Test
    void follows_a_smooth_curve_and_its_derivatives() {
        double omega = 2.0 * Math.PI / PERIOD;
        PeriodicSpline spline = fit(1000, u -> Math.sin(omega * u), 1e-9);
        for (double u = -7.0; u < 30.0; u += 0.37) {
            assertThat(spline.at(u, 0)).isCloseTo(Math.sin(omega * u), within(1e-6));
            assertThat(spline.at(u, 1)).isCloseTo(omega * Math.cos(omega * u), within(1e-5));
            assertThat(spline.at(u, 2)).isCloseTo(-omega * omega * Math.sin(omega * u), within(1e-4));
        }
    }

    @Test
    void halves_a_wave_at_its_cutoff() {
        // 1 / (1 + (w/wc)^6) at w = wc.
        double omega = 8.0 * 2.0 * Math.PI / PERIOD;
        double density = 4000 / PERIOD;
        PeriodicSpline spline = fit(4000, u -> Math.cos(omega * u), density / Math.pow(omega, 6.0));
        assertThat(spline.at(0.0, 0)).isCloseTo(0.5, within(0.01));
    }

    @Test
    void noise_of_the_second_derivative_is_as_stated() {
        // 0.0556 wc^5 sigma^2 / rho, from the integral of the filter's gain.
        double cutoff = 3.0;
        int count = 4000;
        double density = count / PERIOD;
        double squares = 0.0;
        int samples = 0;
        for (int seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            PeriodicSpline spline = fit(count, u -> random.nextGaussian(), density / Math.pow(cutoff, 6.0));
            for (double u = 0.0; u < PERIOD; u += 0.1) {
                squares += Math.pow(spline.at(u, 2), 2.0);
                samples++;
            }
        }
        double expected = 0.0556 * Math.pow(cutoff, 5.0) / density;
        assertThat(squares / samples).isCloseTo(expected, within(0.15 * expected));
    }

    @Test
    void carries_on_over_missing_samples() {
        double omega = 2.0 * Math.PI / PERIOD;
        PeriodicSpline spline = fit(500, u -> u > 4.0 && u < 5.0 ? Double.NaN : Math.sin(omega * u), 1e-4);
        assertThat(spline.at(4.5, 0)).isCloseTo(Math.sin(omega * 4.5), within(1e-3));
    }

    @Test
    void samples_taken_three_times_count_as_much_as_their_weight_times_three() {
        // the first are summed up in three parts, the second in one
        long seed = 20_261_129L;
        Random random = new Random(seed);
        int count = 10_000;
        double[] u = random.doubles(count, 0.0, PERIOD).toArray();
        double[] y = random.doubles(count, -1.0, 1.0).toArray();
        double[] weight = random.doubles(count, 0.1, 1.0).toArray();
        double[] heavy = Arrays.stream(weight).map(w -> 3.0 * w).toArray();

        PeriodicSpline once = PeriodicSpline.fit(PERIOD, 200, u, y, heavy, 0.01);
        PeriodicSpline thrice = PeriodicSpline.fit(PERIOD, 200, thrice(u), thrice(y), thrice(weight), 0.01);

        for (double at = 0.0; at < PERIOD; at += 0.13) {
            assertThat(thrice.at(at, 0)).as("seed %d at %f", seed, at).isCloseTo(once.at(at, 0), within(1.0e-10));
        }
    }

    private static double[] thrice(double[] values) {
        return IntStream.range(0, 3 * values.length)
                .mapToDouble(i -> values[i % values.length])
                .toArray();
    }

    @Test
    void refuses_arrays_of_different_length() {
        assertThatThrownBy(() -> PeriodicSpline.fit(1.0, 10, new double[3], new double[4], new double[3], 1.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("equal lengths");
    }

    @Test
    void closed_curve_gives_length_and_curvature_of_a_circle() {
        double radius = 50.0;
        PlanarCurve circle = new PlanarCurve(
                fit(800, u -> radius * Math.cos(2.0 * Math.PI * u / PERIOD), 1e-9),
                fit(800, u -> radius * Math.sin(2.0 * Math.PI * u / PERIOD), 1e-9));
        PlanarCurve.Points points = circle.walk(3.0, 1.0);
        assertThat(points.step() * points.x().length).isCloseTo(2.0 * Math.PI * radius, within(1e-3));
        for (double curvature : points.curvature()) {
            assertThat(curvature).isCloseTo(1.0 / radius, within(1e-5));
        }
        int last = points.heading().length - 1;
        assertThat(points.heading()[last] - points.heading()[0] + points.step() / radius)
                .isCloseTo(2.0 * Math.PI, within(1e-4));
    }

    private interface Curve {
        double at(double u);
    }

    private static PeriodicSpline fit(int count, Curve curve, double roughness) {
        double[] u = new double[count];
        double[] y = new double[count];
        double[] weight = new double[count];
        Arrays.fill(weight, 1.0);
        for (int i = 0; i < count; i++) {
            u[i] = i * PERIOD / count;
            y[i] = curve.at(u[i]);
        }
        return PeriodicSpline.fit(PERIOD, 200, u, y, weight, roughness);
    }
}
