package setwright.core.simulation.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.PointMassEnvelope;
import setwright.core.limit.QuasiSteadyLap;

/**
 * Laps on the centre lines of real circuits against an independent calculation of the same model (numbers of the project's reference
 * notes, oracle B60, computed there with a spline of its own). The lines are data of OpenStreetMap contributors and
 * lie beside the project, not in it.
 */
final class SharedCircuitsTest {
    private static final Path FOLDER = Path.of("..", "..", "shared", "data", "circuits");

    @ParameterizedTest
    @CsvSource({
        "01, 4358.2, 119.40, 63.26, 10.86, 116.42, 117.59, 118.71, 120.00",
        "04, 4022.3, 70.10, 70.52, 46.41, 63.18, 69.08, 69.65, 70.34",
        "08, 2296.3, 67.96, 56.90, 10.09, 66.62, 67.01, 67.51, 68.38",
        "11, 3904.8, 108.78, 58.38, 15.35, 105.08, 106.98, 108.25, 109.27",
        "13, 5803.4, 156.33, 65.46, 14.14, 150.52, 153.64, 155.63, 156.93"
    })
    void lapTimesAndWhatChangesThem(
            String circuit,
            double length,
            double base,
            double fastest,
            double slowest,
            double downforce,
            double grip,
            double power,
            double mass)
            throws IOException {
        Path file = FOLDER.resolve("circuit-" + circuit + ".csv");
        assumeTrue(Files.exists(file), "no circuits beside the project: " + file);
        PeriodicLine.Curvature line = line(file);
        assertThat(line.lengthM()).isCloseTo(length, within(0.5));
        QuasiSteadyLap lap = lap(line, 1000.0, 1.2, 200.0e3, 0.0);
        assertThat(lap.timeS()).isCloseTo(base, withPercentage(0.5));
        assertThat(lap.highestMps()).isCloseTo(fastest, withPercentage(0.5));
        assertThat(lap.lowestMps()).isCloseTo(slowest, withPercentage(1.0));
        double time = lap.timeS();
        assertThat(lap(line, 1000.0, 1.2, 200.0e3, 1.2).timeS() - time).isCloseTo(downforce - base, within(0.1));
        assertThat(lap(line, 1000.0, 1.26, 200.0e3, 0.0).timeS() - time).isCloseTo(grip - base, within(0.1));
        assertThat(lap(line, 1000.0, 1.2, 210.0e3, 0.0).timeS() - time).isCloseTo(power - base, within(0.1));
        assertThat(lap(line, 1050.0, 1.2, 200.0e3, 0.0).timeS() - time).isCloseTo(mass - base, within(0.1));
    }

    private static QuasiSteadyLap lap(
            PeriodicLine.Curvature line, double mass, double friction, double power, double lift) {
        return LapSimulator.lap(
                new PointMassEnvelope(mass, friction, power, 0.5 * 1.2 * 0.8, lift), line.array(), line.stepM());
    }

    private static PeriodicLine.Curvature line(Path file) throws IOException {
        List<double[]> points = Files.readAllLines(file).stream()
                .skip(1)
                .map(row -> row.split(","))
                .map(cells -> new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])})
                .toList();
        return new PeriodicLine(
                        points.stream().mapToDouble(point -> point[0]).toArray(),
                        points.stream().mapToDouble(point -> point[1]).toArray())
                .curvature(1.0);
    }
}
