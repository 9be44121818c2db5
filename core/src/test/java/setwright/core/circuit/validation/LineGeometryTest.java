package setwright.core.circuit.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;
import setwright.core.circuit.StintBuilder;
import setwright.core.numerics.PeriodicSpline;
import setwright.core.numerics.PlanarCurve;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Lines, lengths and angles against geometry that does not come from this project. */
class LineGeometryTest {
    @Test
    void a_circle_driven_with_noise_has_its_length_and_curvature() {
        // Curvature 1/R and length 2 pi R: Euclid.
        double radius = 120.0;
        double speed = 30.0;
        double rate = 50.0;
        int count = (int) (5.2 * 2.0 * Math.PI * radius / speed * rate);
        double[][] c = new double[4][count];
        Random random = new Random(11);
        for (int i = 0; i < count; i++) {
            double distance = speed * i / rate;
            c[0][i] = radius * Math.cos(distance / radius) + 0.2 * random.nextGaussian();
            c[1][i] = radius * Math.sin(distance / radius) + 0.2 * random.nextGaussian();
            c[2][i] = speed;
            c[3][i] = Math.floor(distance / (2.0 * Math.PI * radius));
        }
        ReferenceLine line = circuit(c, rate).line();
        assertThat(line.lengthM()).isCloseTo(2.0 * Math.PI * radius, within(0.5));
        for (int i = 0; i < line.nodeCount(); i++) {
            // The line promises lateral acceleration to 0.2 m/s2 (one deviation); four and a half are never seen by
            // chance.
            assertThat(line.curvature(i)).isCloseTo(1.0 / radius, within(4.5 * 0.2 / (speed * speed)));
        }
    }

    @Test
    void ninety_degree_bends_of_two_clothoids_have_the_textbook_length_and_angle() {
        // A clothoid of length l to radius R turns l/(2R) (any text on transition curves); two of 47.12 m to R = 30 m
        // turn by 90 degrees.
        double radius = 30.0;
        double clothoid = 47.12;
        double straight = 150.0;
        double rate = 50.0;
        double speed = 15.0;
        double lap = 4.0 * (straight + 2.0 * clothoid);
        int count = (int) (4.0 * lap / speed * rate);
        double[][] c = new double[4][count];
        double heading = 0.0;
        double x = 0.0;
        double y = 0.0;
        int fine = 10;
        for (int i = 0; i < count; i++) {
            c[0][i] = x;
            c[1][i] = y;
            c[2][i] = speed;
            c[3][i] = Math.floor(speed * i / rate / lap);
            for (int k = 0; k < fine; k++) {
                double ds = speed / rate / fine;
                double s = (speed * i / rate + (k + 0.5) * ds) % (straight + 2.0 * clothoid) - 0.5 * straight;
                double kappa = Math.max(0.0, Math.min(s, 2.0 * clothoid - s)) / clothoid / radius;
                heading += 0.5 * kappa * ds;
                x += ds * Math.cos(heading);
                y += ds * Math.sin(heading);
                heading += 0.5 * kappa * ds;
            }
        }
        Circuit circuit = circuit(c, rate);
        ReferenceLine line = circuit.line();
        assertThat(line.lengthM()).isCloseTo(lap, within(1.0));
        assertThat(circuit.corners()).hasSize(4);
        for (Corner corner : circuit.corners()) {
            int begin = (int) Math.round((corner.apexM() - clothoid - 40.0) / line.stepM());
            int end = (int) Math.round((corner.apexM() + clothoid + 40.0) / line.stepM());
            double turned = 0.0;
            for (int i = begin; i < end; i++) {
                turned += line.curvature(Math.floorMod(i, line.nodeCount())) * line.stepM();
            }
            assertThat(Math.toDegrees(turned)).isCloseTo(90.0, within(0.5));
            // The tip of two clothoids is a corner in curvature, which a 1.5 Hz line rounds off by a few per cent.
            assertThat(line.curvatureAt(corner.apexM())).isCloseTo(1.0 / radius, within(0.08 / radius));
        }
    }

    @Test
    void published_circuits_keep_their_length_and_whole_turns() throws IOException {
        List<SharedCircuits.Published> circuits = SharedCircuits.all();
        assumeFalse(
                circuits.isEmpty(),
                "no published centre lines found: set the system property setwright.data to the folder that holds them");
        for (SharedCircuits.Published published : circuits) {
            PlanarCurve.Points points = curve(published.points()).walk(0.0, 1.5);
            double length = points.step() * points.x().length;
            double turned = 0.0;
            double rounder = 0.0;
            double chord = published.lengthM() / published.points().size();
            for (double curvature : points.curvature()) {
                turned += curvature * points.step();
                rounder += Math.pow(curvature * chord, 2.0) / 24.0 * points.step();
            }
            // The notes add up chords c between the points; an arc is longer by the share (c/R)^2 / 24.
            assertThat(length - rounder)
                    .as("length of " + published.name())
                    .isCloseTo(published.lengthM(), within(1.0));
            assertThat(turned / (2.0 * Math.PI))
                    .as("turns of " + published.name())
                    .isCloseTo(Math.rint(published.turns()), within(1e-2));
        }
    }

    private static PlanarCurve curve(List<double[]> places) {
        int count = places.size();
        double[] u = new double[count];
        double[] x = new double[count];
        double[] y = new double[count];
        double[] weight = new double[count];
        Arrays.fill(weight, 1.0);
        double along = 0.0;
        for (int i = 0; i < count; i++) {
            u[i] = along;
            x[i] = places.get(i)[0];
            y[i] = places.get(i)[1];
            double[] next = places.get((i + 1) % count);
            along += Math.hypot(next[0] - x[i], next[1] - y[i]);
        }
        // A cut-off wave of 12 m, a little over two spacings: next to nothing is smoothed away.
        double roughness = count / along * Math.pow(12.0 / (2.0 * Math.PI), 6.0);
        return new PlanarCurve(
                PeriodicSpline.fit(along, count, u, x, weight, roughness),
                PeriodicSpline.fit(along, count, u, y, weight, roughness));
    }

    private static Circuit circuit(double[][] c, double rate) {
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.POSITION_X, Channel.of(c[0]));
        channels.put(Quantity.POSITION_Y, Channel.of(c[1]));
        channels.put(Quantity.SPEED, Channel.of(c[2]));
        channels.put(Quantity.LAP_NUMBER, Channel.of(c[3]));
        return StintBuilder.build(new Recording("geometry", rate, channels, List.of()))
                .circuit();
    }
}
