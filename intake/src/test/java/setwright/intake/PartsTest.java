package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.recording.Quantity;
import setwright.intake.Parts.Part;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Units;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

class PartsTest {
    private static final double RATE_HZ = 10.0;

    @TempDir
    private Path folder;

    /**
     * Stops of 20 and 15 s are stops, one of 5 s is a spin. Four parts of an hour would end at 900 s: the second stop is nearer to that than the
     * first. Behind it the car goes on for 2692.5 s, three parts.
     */
    @Test
    void cutsEvenlyAndWhereTheCarStands() {
        double[] speed = driving(3600);
        stand(speed, 0, 30);
        stand(speed, 500, 520);
        stand(speed, 900, 915);
        stand(speed, 1500, 1505);
        assertThat(parts(speed, 1000.0))
                .containsExactly(
                        new Part(0, 9075, true),
                        new Part(9075, 18050, false),
                        new Part(18050, 27025, false),
                        new Part(27025, 36000, true));
    }

    /** What is a little longer than a stint does not leave a rest of some seconds. */
    @Test
    void leavesNoLittleRest() {
        assertThat(parts(driving(1010), 1000.0)).containsExactly(new Part(0, 5050, false), new Part(5050, 10100, true));
    }

    /** In order, two at a time, and none is begun once one has failed. */
    @Test
    void worksOnAllPartsInOrder() throws IOException {
        Path file = folder.resolve("long.csv");
        Files.writeString(file, new SyntheticRun(5L, 600.0).csv(SyntheticRun.plain(true), ',', false));
        LongRecording parts = LongRecording.open(RecordingFiles.of(file), Optional.empty(), Optional.empty(), 100.0);
        AtomicInteger busy = new AtomicInteger();
        AtomicInteger busiest = new AtomicInteger();
        assertThat(parts.each(part -> {
                    busiest.accumulateAndGet(busy.incrementAndGet(), Math::max);
                    int rows = parts.read(part).recording().sampleCount();
                    busy.decrementAndGet();
                    return List.of(part, rows > 0 ? 1 : 0);
                }))
                .hasSize(parts.count())
                .isEqualTo(IntStream.range(0, parts.count())
                        .mapToObj(part -> List.of(part, 1))
                        .toList());
        assertThat(busiest.get()).isBetween(1, 2);

        Set<Integer> begun = ConcurrentHashMap.newKeySet();
        assertThatThrownBy(() -> parts.each(part -> {
                    begun.add(part);
                    throw new IllegalStateException("part " + part);
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("part 0");
        assertThat(begun).hasSizeLessThanOrEqualTo(2).contains(0);
    }

    @Test
    void leavesAloneWhatIsNoLongerThanAStint() {
        assertThat(parts(driving(900), 1000.0)).containsExactly(new Part(0, 9000, true));
    }

    /** Whatever the car does: every row is in one part, in order, and no part lasts too long. */
    @Test
    void everyRowIsInOnePart() {
        Random random = new Random(20261127L);
        for (int trial = 0; trial < 50; trial++) {
            double[] speed = driving(2000 + random.nextInt(2000));
            for (int k = 0; k < 12; k++) {
                int from = random.nextInt(1900);
                stand(speed, from, from + random.nextInt(60));
            }
            for (int k = 0; k < 100; k++) {
                speed[random.nextInt(speed.length)] = Double.NaN;
            }
            double longest = 300.0 + random.nextInt(500);
            int next = 0;
            for (Part part : parts(speed, longest)) {
                assertThat(part.from()).isEqualTo(next);
                assertThat(part.to()).isGreaterThan(part.from());
                assertThat((part.to() - 1 - part.from()) / RATE_HZ).isLessThanOrEqualTo(longest + 1.0e-6);
                next = part.to();
            }
            assertThat(next).isEqualTo(speed.length);
        }
    }

    /** Also that the speed is found where no map tells it, and that the lines are those of the file. */
    @Test
    void aPartIsReadAsIfTheFileHeldNothingElse() throws IOException {
        String text = new SyntheticRun(5L, 600.0).csv(SyntheticRun.plain(true), ',', false);
        List<String> lines = text.lines().toList();
        Path file = folder.resolve("long.csv");
        Files.writeString(file, text);
        LongRecording parts = LongRecording.open(RecordingFiles.of(file), Optional.empty(), Optional.empty(), 250.0);
        assertThat(parts.count()).isEqualTo(3);
        assertThat(parts.suffix(1)).isEqualTo(", part 2 of 3");
        for (int k = 0; k < 3; k++) {
            int from = 1 + k * 10_000;
            int to = Math.min(lines.size(), from + 10_000);
            Path alone = folder.resolve("alone.csv");
            Files.write(
                    alone,
                    Stream.concat(lines.stream().limit(1), lines.subList(from, to).stream())
                            .toList());
            Intake part = parts.read(k);
            Intake same = RecordingReader.read(alone, Optional.empty(), Optional.empty());
            assertThat(part.proposal().map()).isEqualTo(same.proposal().map());
            assertThat(part.recording().sampleCount())
                    .isEqualTo(same.recording().sampleCount());
            for (Quantity quantity : Quantity.values()) {
                assertThat(part.recording().has(quantity))
                        .isEqualTo(same.recording().has(quantity));
                if (part.recording().has(quantity)) {
                    assertThat(Arrays.equals(
                                    part.recording().channel(quantity).toArray(),
                                    same.recording().channel(quantity).toArray()))
                            .as(quantity.words())
                            .isTrue();
                }
            }
            assertThat(part.remarks().get(0))
                    .contains("part " + (k + 1) + " of 3", "lines " + (from + 1) + " to " + to);
        }
    }

    private static double[] driving(int seconds) {
        double[] speed = new double[(int) (seconds * RATE_HZ)];
        Arrays.fill(speed, 40.0);
        return speed;
    }

    private static void stand(double[] speed, int fromS, int toS) {
        Arrays.fill(speed, (int) (fromS * RATE_HZ), Math.min(speed.length, (int) (toS * RATE_HZ)), 0.1);
    }

    private static List<Part> parts(double[] speed, double longestS) {
        double[] time = new double[speed.length];
        for (int i = 0; i < time.length; i++) {
            time[i] = i / RATE_HZ;
        }
        Table table =
                new Table("made.csv", List.of(TableColumn.of("t", "s", time), TableColumn.of("v", "m/s", speed)), 2);
        Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
        entries.put(Quantity.TIME, new MapEntry("t", Units.get(Dimension.TIME, "s"), 1, 0.0));
        entries.put(Quantity.SPEED, new MapEntry("v", Units.get(Dimension.SPEED, "m/s"), 1, 0.0));
        return Parts.of(table, Optional.of(new ChannelMap(entries)), Optional.empty(), longestS);
    }
}
