package setwright.intake.columns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.recording.Calibration;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.problem.InputProblem;

final class RecordingColumnsTest {
    @TempDir
    Path folder;

    private static Recording any(long seed, int samples) {
        Random random = new Random(seed);
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (quantity == Quantity.SPEED || random.nextBoolean()) {
                channels.put(
                        quantity,
                        Channel.of(random.doubles(samples)
                                .map(value -> switch ((int) (value * 20)) {
                                    case 0 -> Double.NaN;
                                    case 1 -> Double.longBitsToDouble(random.nextLong());
                                    case 2 -> -0.0;
                                    default -> value;
                                })
                                .toArray()));
            }
        }
        return new Recording(
                "l'été \"4\".csv",
                100.0 / 3.0,
                channels,
                List.of(new Calibration("steering zero", -1.25, "deg", "straights, it's 'sure'")));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2047, 2049, 130_000})
    void comesBackToTheLastBit(int samples) throws IOException {
        Recording recording = any(samples, samples);
        Path file = Files.createDirectories(folder.resolve("season[2] what? *").resolve("year=2025"))
                .resolve("a 'strange' name.parquet");

        RecordingColumns.write(file, recording);
        Recording read = RecordingColumns.read(file);

        assertThat(read.name()).isEqualTo(recording.name());
        assertThat(read.sampleRateHz()).isEqualTo(recording.sampleRateHz());
        assertThat(read.calibrations()).isEqualTo(recording.calibrations());
        assertThat(read.quantities()).isEqualTo(recording.quantities());
        for (Quantity quantity : recording.quantities()) {
            assertThat(Arrays.equals(
                            read.channel(quantity).toArray(),
                            recording.channel(quantity).toArray()))
                    .as(quantity.words())
                    .isTrue();
        }
    }

    /** An independent look at the file, through the engine's own reader: units in every header, plain doubles. */
    @Test
    void canBeOpenedByOthers() throws Exception {
        Path file = folder.resolve("run.parquet");
        RecordingColumns.write(file, any(3, 10));

        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT name, type FROM parquet_schema('" + file + "') WHERE name LIKE 'speed%'")) {
            assertThat(rows.next()).isTrue();
            assertThat(rows.getString(1)).isEqualTo("speed (m/s)");
            assertThat(rows.getString(2)).isEqualTo("DOUBLE");
        }
    }

    @Test
    void refusesWhatItDidNotWrite() throws Exception {
        Path text = Files.writeString(folder.resolve("text.parquet"), "time,speed\n1,2\n");
        Path other = folder.resolve("other.parquet");
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute("COPY (SELECT 1.0::DOUBLE AS \"speed (m/s)\") TO '" + other + "' (FORMAT parquet)");
        }
        Path half = folder.resolve("half.parquet");
        RecordingColumns.write(half, any(5, 5000));
        byte[] bytes = Files.readAllBytes(half);
        Files.write(half, Arrays.copyOf(bytes, bytes.length / 2));

        for (Path file : List.of(text, other, half, folder.resolve("none.parquet"))) {
            assertThatThrownBy(() -> RecordingColumns.read(file))
                    .isInstanceOf(InputProblem.class)
                    .hasMessageContaining(file.getFileName().toString())
                    .hasMessageContaining("the channels of a recording");
        }
    }
}
