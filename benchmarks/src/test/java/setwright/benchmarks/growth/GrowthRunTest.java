package setwright.benchmarks.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.benchmarks.laps.FileShape;
import setwright.benchmarks.laps.WrittenLaps;
import setwright.benchmarks.measure.Spent;

/** Parts, lines and drawings; no time is asserted but those that are made up. */
final class GrowthRunTest {
    private static final double ROUND_OFF = 1.0e-12;

    @TempDir
    private Path folder;

    @Test
    void allPartsOfAFileAreRun() throws Exception {
        WrittenLaps laps = WrittenLaps.drive(2);
        assertThat(PointProcess.run(laps.write(folder, new FileShape(2, 25.0, 10))))
                .containsOnlyKeys(Part.values());
        assertThat(PointProcess.run(laps.write(folder, new FileShape(1, 25.0, 10))))
                .as("a lap alone is refused")
                .containsOnlyKeys(Part.READ, Part.LAPS, Part.WHOLE);
    }

    @Test
    void aStraightLineIsFound() {
        StraightLine line = StraightLine.through(new double[] {1, 10, 100}, new double[] {5.2, 7.0, 25.0});
        assertThat(line.start()).isCloseTo(5.0, within(ROUND_OFF));
        assertThat(line.slope()).isCloseTo(0.2, within(ROUND_OFF));
        assertThat(line.off()).isCloseTo(0.0, within(ROUND_OFF));
        assertThat(StraightLine.through(new double[] {0, 1, 2}, new double[] {1, 2, 1})
                        .off())
                .isCloseTo(1.0 / 3.0, within(ROUND_OFF));
    }

    @Test
    void tablesCsvAndDrawingsTellTheSame() throws Exception {
        Map<Series, List<Point>> all = new EnumMap<>(Series.class);
        for (Series series : Series.values()) {
            all.put(
                    series,
                    series.points().stream()
                            .map(value -> new Point(value, 1_000_000L * value, List.of(round(value), round(value))))
                            .toList());
        }
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        new GrowthRun(new PrintStream(text, true, StandardCharsets.UTF_8), folder, 2, false, false).report(all);
        assertThat(text.toString(StandardCharsets.UTF_8))
                .contains("| 30 | 30 MB | 30.0 s (30.0 s) |", "straight line", "100 laps over 10 laps: 10.0");
        List<String> csv = Files.readAllLines(folder.resolve("growth.csv"));
        assertThat(csv).hasSize(1 + Part.values().length * (5 + 6 + 5));
        assertThat(csv).allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(11));
        for (Series series : Series.values()) {
            var document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(folder.resolve(series.fileName()).toFile());
            assertThat(document.getElementsByTagName("path").getLength()).isEqualTo(Part.values().length);
        }
    }

    private static Map<Part, Spent> round(int value) {
        Map<Part, Spent> parts = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            parts.put(part, new Spent(value, value, Double.NaN));
        }
        return parts;
    }
}
