package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.SyntheticRun.Writing;

/** However a run is written down, the same recording comes out. */
class LayoutLawsTest {
    private static final long SEED = 20_260_110L;
    private static final double GRAVITY = 9.80665;
    private static final List<Quantity> COMPARED = List.of(
            Quantity.SPEED,
            Quantity.LONGITUDINAL_ACCELERATION,
            Quantity.LATERAL_ACCELERATION,
            Quantity.YAW_RATE,
            Quantity.STEERING_WHEEL_ANGLE,
            Quantity.THROTTLE,
            Quantity.BRAKE);

    @TempDir
    private Path folder;

    private SyntheticRun run = new SyntheticRun(SEED, 1.0);
    private Recording plain = empty();

    private static Recording empty() {
        return new Recording(
                "none",
                1.0,
                java.util.Map.of(Quantity.SPEED, setwright.core.recording.Channel.of(new double[1])),
                List.of());
    }

    @BeforeEach
    void readPlain() {
        run = new SyntheticRun(SEED, 200.0);
        plain = read("plain.csv", run.csv(SyntheticRun.plain(true), ',', false));
    }

    private Recording read(String name, String text) {
        return RecordingReader.read(SyntheticRun.write(folder, name, text), Optional.empty(), Optional.empty())
                .recording();
    }

    private void assertSame(Recording other, String what) {
        for (Quantity quantity : COMPARED) {
            double[] a = plain.channel(quantity).toArray();
            double[] b = other.channel(quantity).toArray();
            assertThat(b).as("%s: %s", what, quantity).hasSameSizeAs(a);
            for (int i = 0; i < a.length; i++) {
                // Nine digits are written; calibrations carry the rounding of others.
                assertThat(b[i]).as("%s: %s, sample %d", what, quantity, i).isCloseTo(a[i], within(1.0e-5));
            }
        }
    }

    @Test
    void plainChannelsAreWhatWasWritten() {
        double[] v = plain.channel(Quantity.SPEED).toArray();
        double[] steer = plain.channel(Quantity.STEERING_WHEEL_ANGLE).toArray();
        for (int i = 0; i < v.length; i++) {
            assertThat(v[i]).isCloseTo(run.get("v")[i], within(1.0e-6));
            assertThat(steer[i]).isCloseTo(run.get("steer")[i], within(1.0e-6));
        }
        assertThat(plain.calibrations()).as("nothing is wrong").isEmpty();
    }

    @Test
    void anyUnitsAndSignsAndOrderGiveTheSameRecording() {
        Random random = new Random(SEED);
        double degree = 180.0 / Math.PI;
        List<List<Writing>> choices = List.of(
                List.of(
                        new Writing("v", "speed [km/h]", 3.6),
                        new Writing("v", "v_mph", 3600.0 / 1609.344),
                        new Writing("v", "Ground speed (kn)", 3600.0 / 1852.0),
                        new Writing("v", "vehicleSpeed", 3.6)),
                List.of(
                        new Writing("ax", "accel_long_g", 1.0 / GRAVITY),
                        new Writing("ax", "ax", -1.0),
                        new Writing("ax", "ax [ft/s2]", 1.0 / 0.3048),
                        new Writing("ax", "long acc", -1.0 / GRAVITY)),
                List.of(
                        new Writing("ay", "a_lat_g", -1.0 / GRAVITY),
                        new Writing("ay", "ay", 1.0),
                        new Writing("ay", "ay [mg]", 1000.0 / GRAVITY),
                        new Writing("ay", "latAcc", -1.0)),
                List.of(
                        new Writing("r", "yawrate_degs", -degree),
                        new Writing("r", "Yaw velocity", degree),
                        new Writing("r", "yaw rate [rpm]", 30.0 / Math.PI),
                        new Writing("r", "gyro z [rad/s]", -1.0)),
                List.of(
                        new Writing("steer", "steer_deg", -degree),
                        new Writing("steer", "Steering", degree),
                        new Writing("steer", "handwheel [rev]", 0.5 / Math.PI),
                        new Writing("steer", "handwheel (rad)", -1.0)),
                List.of(
                        new Writing("throttle", "gas", 1.0),
                        new Writing("throttle", "throttle pos", -100.0, 100.0),
                        new Writing("throttle", "acceleratorPedal_pct", 100.0)),
                List.of(new Writing("brake", "brake", 1.0), new Writing("brake", "brk_pct", 100.0)),
                List.of(new Writing("t", "t_ms", 1000.0), new Writing("t", "Time", 1.0)));
        for (int trial = 0; trial < 16; trial++) {
            List<Writing> writings = SyntheticRun.plain(true);
            for (List<Writing> choice : choices) {
                if (random.nextInt(4) > 0) {
                    writings = SyntheticRun.replaced(writings, choice.get(random.nextInt(choice.size())));
                }
            }
            writings = SyntheticRun.shuffled(writings, random);
            String what = "seed " + SEED + ", trial " + trial + ": "
                    + writings.stream().map(Writing::header).toList();
            assertSame(read("trial" + trial + ".csv", run.csv(writings, ',', false)), what);
        }
    }

    @Test
    void headersThatSayNothingAreResolvedByPhysics() {
        List<Writing> writings = SyntheticRun.plain(true);
        writings = SyntheticRun.replaced(writings, new Writing("v", "channel 1", 3.6));
        writings = SyntheticRun.replaced(writings, new Writing("ax", "channel 2", 1.0 / GRAVITY));
        writings = SyntheticRun.replaced(writings, new Writing("ay", "channel 3", 1.0));
        writings = SyntheticRun.replaced(writings, new Writing("r", "channel 4", 180.0 / Math.PI));
        writings = SyntheticRun.replaced(writings, new Writing("steer", "channel 5", -180.0 / Math.PI));
        writings = SyntheticRun.replaced(writings, new Writing("throttle", "channel 6", 100.0));
        writings = SyntheticRun.replaced(writings, new Writing("brake", "channel 7 [%]", 100.0));
        assertSame(read("nameless.csv", run.csv(writings, ',', false)), "nameless");
    }

    @Test
    void headersThatMisleadAreOverruledByPhysics() {
        List<Writing> writings = SyntheticRun.plain(true);
        writings = SyntheticRun.replaced(writings, new Writing("ay", "yaw rate", 1.0));
        writings = SyntheticRun.replaced(writings, new Writing("r", "lateral acceleration", 1.0));
        writings = SyntheticRun.replaced(writings, new Writing("steer", "steering [rad]", 180.0 / Math.PI));
        assertSame(read("misleading.csv", run.csv(writings, ',', false)), "misleading");
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "\t", "|"})
    void anyDelimiterAndDecimalComma(String delimiter) {
        for (boolean comma : new boolean[] {false, true}) {
            String text = run.csv(SyntheticRun.plain(true), delimiter.charAt(0), comma);
            assertSame(read("dialect.csv", text), "delimiter " + delimiter + " comma " + comma);
        }
    }

    @Test
    void anyEncodingAndCompression() throws IOException {
        String text = run.csv(
                SyntheticRun.replaced(
                        SyntheticRun.plain(true), new Writing("steer", "Lenkwinkel [°]", 180.0 / Math.PI)),
                ';',
                true);
        for (Charset charset : List.of(
                StandardCharsets.UTF_8,
                StandardCharsets.ISO_8859_1,
                StandardCharsets.UTF_16LE,
                StandardCharsets.UTF_16BE)) {
            String mark = charset.name().startsWith("UTF") ? "\uFEFF" : "";
            Path file = SyntheticRun.write(folder, "encoded.csv", mark + text, charset);
            assertSame(
                    RecordingReader.read(file, Optional.empty(), Optional.empty())
                            .recording(),
                    charset.name());
        }
        Path packed = folder.resolve("packed.csv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
            out.write(text.getBytes(StandardCharsets.ISO_8859_1));
        }
        assertSame(
                RecordingReader.read(packed, Optional.empty(), Optional.empty()).recording(), "gzip");
    }

    @Test
    void unitsInASecondRowAndLinesAboveTheHeader() {
        List<Writing> writings = SyntheticRun.plain(true);
        String text = run.csv(writings, ',', false);
        int end = text.indexOf('\n');
        String header = text.substring(0, end);
        String names = header.replaceAll(" \\[[^]]*]", "");
        String units = "s,m/s,m/s2,m/s2,rad/s,rad,%,%,,m,m";
        assertSame(read("units.csv", names + "\n" + units + text.substring(end)), "row of units");
        assertSame(
                read(
                        "bracketed.csv",
                        names + "\n[s],[m/s],[m/s2],[m/s2],[rad/s],[rad],[%],[%],[],[m],[m]" + text.substring(end)),
                "row of units in brackets");
        assertSame(read("preamble.csv", "Recorded by a logger\nDriver,nobody\n\n" + text), "lines above the header");
        assertSame(read("windows.csv", text.replace("\n", "\r\n")), "carriage returns");
    }

    @Test
    void missingRowsAndEmptyCellsStayGapsAndChangeNothingElse() {
        String text = run.csv(SyntheticRun.plain(true), ',', false);
        String[] lines = text.split("\n", -1);
        StringBuilder thinned = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            if (i > 3000 && i <= 3020) {
                continue;
            }
            String line = lines[i];
            if (i > 5000 && i <= 5010) {
                String[] cells = line.split(",", -1);
                cells[5] = "";
                line = String.join(",", cells);
            }
            thinned.append(line).append('\n');
        }
        Recording gappy = read("gappy.csv", thinned.toString());
        double[] steer = gappy.channel(Quantity.STEERING_WHEEL_ANGLE).toArray();
        double[] speed = gappy.channel(Quantity.SPEED).toArray();
        double[] whole = plain.channel(Quantity.STEERING_WHEEL_ANGLE).toArray();
        assertThat(steer).hasSameSizeAs(whole);
        for (int i = 0; i < steer.length; i++) {
            boolean rowGone = i >= 3000 && i < 3020;
            boolean cellGone = i >= 5000 && i < 5010;
            assertThat(Double.isNaN(speed[i])).as("speed %d", i).isEqualTo(rowGone);
            if (rowGone || cellGone) {
                assertThat(steer[i]).as("steer %d", i).isNaN();
            } else {
                // The calibrations see slightly other samples.
                assertThat(steer[i]).as("steer %d", i).isCloseTo(whole[i], within(2.0e-3));
            }
        }
    }
}
