package setwright.intake.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;

/**
 * Damaged files of every kind that recordings come in: each is read, or refused in one sentence, within ten seconds and bounded memory.
 *
 * <p>A reader in native code that crashed would end the whole test run, which is seen as well.
 */
class HostileFilesTest {
    /** What the program promises for a megabyte; the files here are far smaller. */
    private static final Duration LONGEST = Duration.ofSeconds(10);

    @TempDir
    private Path folder;

    /** A kind of file, and its share of all inputs. */
    enum Kind {
        TEXT(0.35),
        PACKED_TEXT(0.05),
        PARQUET(0.05),
        MEASUREMENT(0.2),
        GPX(0.1),
        NMEA(0.1);

        private final double share;

        Kind(double share) {
            this.share = share;
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aDamagedFileIsReadOrRefusedInOneSentence(Kind kind) throws Exception {
        List<byte[]> whole = files(kind);
        List<byte[]> texts = texts();
        Mutator mutator = new Mutator(kind.ordinal());
        Path file = folder.resolve("input");
        int read = 0;
        int refused = 0;
        for (int i = 0; i < Inputs.share(kind.share); i++) {
            byte[] damaged = mutator.damaged(whole.get(i % whole.size()), whole.get((i * 7 + 1) % whole.size()));
            damaged = kind == Kind.PACKED_TEXT && i % 2 == 0
                    ? packed(mutator.damaged(texts.get(i % 8), texts.get(0)))
                    : damaged;
            Files.write(file, damaged);
            long before = System.nanoTime();
            try {
                check(Formats.read(file));
                read++;
            } catch (InputProblem problem) {
                assertThat(problem.getMessage())
                        .as("input %d", i)
                        .startsWith("input")
                        .doesNotContain("\n", "\0");
                refused++;
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                Path kept = Files.write(Path.of("target", "hostile-" + kind + "-" + i), damaged);
                throw new AssertionError("input " + i + ", kept in " + kept, e);
            }
            assertThat(Duration.ofNanos(System.nanoTime() - before))
                    .as("input %d", i)
                    .isLessThan(LONGEST);
        }
        assertThat(read).as("some damage does not matter").isPositive();
        assertThat(refused).as("some does").isPositive();
    }

    /** A table is whole: all columns equally long, no infinite number. */
    private static void check(List<Table> tables) {
        assertThat(tables).isNotEmpty();
        for (Table table : tables) {
            table.columns().forEach(column -> {
                assertThat(column.size()).isEqualTo(table.rowCount());
                assertThat(Arrays.stream(column.toArray()).noneMatch(Double::isInfinite))
                        .isTrue();
            });
        }
    }

    private List<byte[]> files(Kind kind) throws Exception {
        return switch (kind) {
            case TEXT -> texts();
            case PACKED_TEXT -> texts().stream().map(HostileFilesTest::packed).toList();
            case PARQUET -> parquet();
            case MEASUREMENT -> measurements();
            case GPX -> List.of(gpx().getBytes(StandardCharsets.UTF_8), gpx().getBytes(StandardCharsets.UTF_16));
            case NMEA -> List.of(nmea().getBytes(StandardCharsets.US_ASCII));
        };
    }

    /** The beginnings of all practice recordings: four hundred rows each. */
    private static List<byte[]> texts() throws Exception {
        List<byte[]> texts = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            String name = "/cases/practice-0" + i + "/stint1.csv.gz";
            try (InputStream in =
                    new GZIPInputStream(Objects.requireNonNull(HostileFilesTest.class.getResourceAsStream(name)))) {
                texts.add(new String(in.readNBytes(200_000), StandardCharsets.UTF_8)
                        .lines()
                        .limit(400)
                        .collect(Collectors.joining("\n"))
                        .getBytes(StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private static byte[] packed(byte[] text) {
        var out = new java.io.ByteArrayOutputStream();
        try (var gzip = new java.util.zip.GZIPOutputStream(out)) {
            gzip.write(text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private List<byte[]> parquet() throws Exception {
        List<byte[]> files = new ArrayList<>();
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement()) {
            for (String compression : List.of("uncompressed", "snappy", "zstd", "gzip")) {
                Path file = folder.resolve(compression + ".parquet");
                statement.execute(
                        "COPY (SELECT i * 0.01 AS t, sin(i) AS v, i % 5 AS gear, 'lap ' || (i % 3) AS word FROM"
                                + " range(900) t(i)) TO " + Engine.text(file.toString())
                                + " (FORMAT parquet, COMPRESSION "
                                + compression + ")");
                files.add(Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static List<byte[]> measurements() throws Exception {
        Path fixtures = Path.of(Objects.requireNonNull(HostileFilesTest.class.getResource("/setwright/intake/mdf"))
                .toURI());
        try (Stream<Path> files = Files.list(fixtures)) {
            List<byte[]> all = new ArrayList<>();
            for (Path file : files.filter(path -> path.toString().endsWith(".mf4"))
                    .sorted()
                    .toList()) {
                all.add(Files.readAllBytes(file));
            }
            assertThat(all).isNotEmpty();
            return all;
        }
    }

    private static String gpx() {
        return "<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg>\n"
                + IntStream.range(0, 200)
                        .mapToObj(i -> "<trkpt lat=\"47.1" + i + "\" lon=\"8.2" + i + "\"><ele>4" + i
                                + "</ele><time>2031-05-04T09:" + (10 + i / 60) + ":" + (i % 60 < 10 ? "0" : "") + i % 60
                                + "Z</time></trkpt>")
                        .collect(Collectors.joining("\n"))
                + "\n</trkseg></trk></gpx>";
    }

    private static String nmea() {
        return IntStream.range(0, 200)
                .mapToObj(i -> "GPRMC,0915" + (10 + i / 10) + "." + i % 10 + ",A,4807.0" + (100 + i)
                        + ",N,01131.000,E,022.4,084.4,040531,,,A")
                .map(HostileFilesTest::sentence)
                .collect(Collectors.joining("\r\n"));
    }

    private static String sentence(String body) {
        int sum = body.chars().reduce(0, (a, b) -> a ^ b);
        return "$" + body + "*" + String.format(java.util.Locale.ROOT, "%02X", sum);
    }
}
