package setwright.intake.gather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** A practice recording taken apart into files of several devices, and put together again. */
class GathererTest {
    private static final Instant NOON = Instant.parse("2031-05-04T12:00:00Z");
    /** What the receiver's clock says when the logger's says zero, s. */
    private static final double AHEAD_S = 431.37;

    private static Table whole;
    private static Recording together;

    @TempDir
    private Path folder;

    @BeforeAll
    static void readWhole() throws Exception {
        Path file = Path.of(Objects.requireNonNull(GathererTest.class.getResource("/cases/practice-02/stint1.csv.gz"))
                .toURI());
        whole = Formats.read(file).get(0);
        together =
                RecordingReader.read(file, Optional.empty(), Optional.empty()).recording();
    }

    private static double at(String header, int row) {
        return whole.column(header).orElseThrow().get(row);
    }

    private static boolean isPlace(TableColumn column) {
        return column.header().startsWith("gps");
    }

    /** The rows that are wanted of the columns that are wanted. */
    private Path csv(String name, Stream<TableColumn> columns, IntPredicate rows, double clockS) throws IOException {
        var list = columns.toList();
        String head = list.stream().map(TableColumn::header).collect(Collectors.joining(","));
        String body = IntStream.range(0, whole.rowCount())
                .filter(rows)
                .mapToObj(row -> list.stream()
                        .map(column -> column.get(row) + (column.header().equals("timeSec") ? clockS : 0.0))
                        .map(value -> Double.isNaN(value) ? "" : value.toString())
                        .collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n"));
        return Files.writeString(folder.resolve(name), head + "\n" + body + "\n");
    }

    private Path withoutPlace(IntPredicate rows) throws IOException {
        return csv("car.csv", whole.columns().stream().filter(column -> !isPlace(column)), rows, 0.0);
    }

    private Path gpx(int every, double noiseM) throws IOException {
        Random random = new Random(3);
        StringBuilder text = new StringBuilder("<gpx version=\"1.1\"><trk><trkseg>\n");
        for (int row = 0; row < whole.rowCount(); row += every) {
            double latitude = at("gpsLatitude", row) + noiseM * random.nextGaussian() / 111_000.0;
            double longitude = at("gpsLongitude", row) + noiseM * random.nextGaussian() / 111_000.0;
            if (Double.isFinite(latitude) && Double.isFinite(longitude)) {
                text.append(String.format(
                        Locale.ROOT,
                        "<trkpt lat=\"%.8f\" lon=\"%.8f\"><time>%s</time></trkpt>%n",
                        latitude,
                        longitude,
                        NOON.plusNanos(Math.round(1.0e9 * (at("timeSec", row) + AHEAD_S)))));
            }
        }
        return Files.writeString(folder.resolve("track.gpx"), text + "</trkseg></trk></gpx>");
    }

    private static double[] distances(Recording one, Recording other) {
        double[] x = one.channel(Quantity.POSITION_X).toArray();
        double[] y = one.channel(Quantity.POSITION_Y).toArray();
        double[] x2 = other.channel(Quantity.POSITION_X).toArray();
        double[] y2 = other.channel(Quantity.POSITION_Y).toArray();
        return IntStream.range(0, Math.min(x.length, x2.length))
                .mapToDouble(i -> Math.hypot(x[i] - x2[i], y[i] - y2[i]))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
    }

    @Test
    void aTrackOfAnotherClockIsPutBesideTheCar() throws IOException {
        RecordingFiles files = new RecordingFiles(withoutPlace(row -> true), java.util.List.of(gpx(5, 0.2)));
        Intake intake = RecordingReader.read(files, Optional.empty(), Optional.empty());
        assertThat(intake.remarks())
                .anySatisfy(remark -> assertThat(remark).contains("track.gpx was put beside car.csv", "ahead"));
        double[] apart = distances(intake.recording(), together);
        // Two noises of the positions, 0.2 m in the track and what the recording has, and 60 m/s over what is left of
        // the clocks.
        assertThat(apart[apart.length / 2]).isLessThan(1.0);
        assertThat(apart[(int) (0.99 * apart.length)]).isLessThan(3.0);
    }

    @Test
    void theDifferenceOfClocksIsFoundToTheHundredth() throws IOException {
        TimedTable car = TimedTable.of(Formats.read(withoutPlace(row -> true)).get(0));
        for (int every : new int[] {5, 50}) {
            TimedTable track = TimedTable.of(Formats.read(gpx(every, 0.2)).get(0));
            ClockMatch match = ClockMatch.find(car, track).orElseThrow();
            double expected = -AHEAD_S - NOON.getEpochSecond();
            assertThat(match.offsetS()).as("every %d rows", every).isEqualTo(expected, within(0.05));
            assertThat(match.quantity()).isEqualTo(Quantity.SPEED);
        }
    }

    @Test
    void channelsAtAnotherRateOnTheSameClockAreJoined() throws IOException {
        Path slow = csv(
                "slow.csv",
                whole.columns().stream()
                        .filter(column -> column.header().equals("timeSec")
                                || column.header().equals("fuelMass_kg")
                                || column.header().equals("gearEngaged")),
                row -> row % 10 == 0,
                0.0);
        Path quick = csv(
                "quick.csv",
                whole.columns().stream()
                        .filter(column -> !column.header().equals("fuelMass_kg")
                                && !column.header().equals("gearEngaged")),
                row -> true,
                0.0);
        Table gathered = Gatherer.read(new RecordingFiles(quick, java.util.List.of(slow)));
        assertThat(gathered.remarks()).singleElement().asString().contains("is taken to be on the clock of quick.csv");
        TableColumn gear = gathered.column("gearEngaged").orElseThrow();
        for (int row = 0; row < gear.size(); row++) {
            double value = gear.get(row);
            assertThat(Double.isNaN(value) || value == Math.rint(value)).isTrue();
        }
        assertThat(gathered.rowCount()).isEqualTo(whole.rowCount());
    }

    @Test
    void anotherRunIsRefused() throws Exception {
        Path other = Path.of(Objects.requireNonNull(getClass().getResource("/cases/practice-08/stint1.csv.gz"))
                .toURI());
        RecordingFiles files = new RecordingFiles(withoutPlace(row -> true), java.util.List.of(other));
        assertThatThrownBy(() -> Gatherer.read(files))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("expected the same run as car.csv");
    }

    /** One lap out of nine: any other lap fits nearly as well, and an answer that is a lap off is worse than none. */
    @Test
    void aLapIsNeverTakenForAnother() throws IOException {
        TimedTable track = TimedTable.of(Formats.read(gpx(5, 0.2)).get(0));
        int refused = 0;
        for (int k = 0; k < 8; k++) {
            double from = 75.0 * (k + 1);
            Path part = withoutPlace(row -> at("timeSec", row) >= from && at("timeSec", row) < from + 70.0);
            TimedTable car = TimedTable.of(Formats.read(part).get(0));
            try {
                double offset = ClockMatch.find(car, track).orElseThrow().offsetS();
                assertThat(offset).as("from %.0f s", from).isEqualTo(-AHEAD_S - NOON.getEpochSecond(), within(0.1));
            } catch (InputProblem problem) {
                assertThat(problem).hasMessageContaining("Laps are alike");
                refused++;
            }
        }
        assertThat(refused).as("refused of 8").isLessThan(8);
    }

    @Test
    void filesWithoutACommonMotionMustShareAClock() throws IOException {
        Path words = Files.writeString(
                folder.resolve("air.csv"),
                "time s,air temperature C\n"
                        + IntStream.range(0, 50)
                                .mapToObj(i -> (90_000 + i) + "," + (20 + i % 3))
                                .collect(Collectors.joining("\n")));
        RecordingFiles files = new RecordingFiles(withoutPlace(row -> true), java.util.List.of(words));
        assertThatThrownBy(() -> Gatherer.read(files))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("no motion that both tell of");
    }
}
