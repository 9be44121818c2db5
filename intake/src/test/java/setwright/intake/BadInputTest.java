package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.recording.Quantity;
import setwright.intake.SyntheticRun.Writing;
import setwright.intake.problem.InputProblem;

/** Every bad input gives one clear message that says where and what to do. */
class BadInputTest {
    private static final long SEED = 20_260_111L;
    private static String good = "";

    @TempDir
    private Path folder;

    @BeforeAll
    static void writeGood() {
        good = new SyntheticRun(SEED, 120.0).csv(SyntheticRun.plain(true), ',', false);
    }

    private InputProblem problem(Path file) {
        InputProblem problem = catchThrowableOfType(
                InputProblem.class, () -> RecordingReader.read(file, Optional.empty(), Optional.empty()));
        assertThat(problem).as("%s must be refused", file.getFileName()).isNotNull();
        assertThat(problem.getMessage()).startsWith(file.getFileName() + "").contains("expected");
        assertThat(problem.getMessage()).doesNotContain("Exception").doesNotContain("\n");
        return problem;
    }

    private InputProblem problem(String text) {
        return problem(SyntheticRun.write(folder, "run.csv", text));
    }

    private static String withCell(int line, int column, String cell) {
        String[] lines = good.split("\n", -1);
        String[] cells = lines[line - 1].split(",", -1);
        cells[column] = cell;
        lines[line - 1] = String.join(",", cells);
        return String.join("\n", lines);
    }

    @Test
    void lapsOfTenRows() {
        StringBuilder text = new StringBuilder();
        String[] lines = good.split("\n", -1);
        List<String> headers = List.of(lines[0].split(",", -1));
        int lap = headers.indexOf(headers.stream()
                .filter(header -> header.toLowerCase(java.util.Locale.ROOT).contains("lap"))
                .filter(header -> !header.toLowerCase(java.util.Locale.ROOT).contains("dist"))
                .findFirst()
                .orElseThrow());
        for (int i = 0; i < lines.length; i++) {
            String[] cells = lines[i].split(",", -1);
            if (i > 0 && cells.length > lap) {
                cells[lap] = String.valueOf((i - 1) / 10);
            }
            text.append(String.join(",", cells)).append('\n');
        }
        assertThat(problem(text.toString()))
                .hasMessageContaining("line 12")
                .hasMessageContaining(headers.get(lap))
                .hasMessageContaining("no lap is that short");
    }

    @Test
    void oneWildReadingBecomesAGapAndIsTold() {
        String[] headers = good.split("\n", 2)[0].split(",", -1);
        int speed = 0;
        while (!headers[speed].toLowerCase(java.util.Locale.ROOT).contains("speed")) {
            speed++;
        }
        Path file = SyntheticRun.write(folder, "spike.csv", withCell(2_000, speed, "99999"));
        Intake intake = RecordingReader.read(file, Optional.empty(), Optional.empty());

        assertThat(intake.remarks()).anyMatch(remark -> remark.contains("no car can make"));
        double[] samples = intake.recording().channel(Quantity.SPEED).toArray();
        assertThat(Arrays.stream(samples).filter(Double::isFinite).max().orElseThrow())
                .isLessThan(150.0);
    }

    @Test
    void missingFileAndFolder() {
        assertThat(problem(folder.resolve("nothing.csv"))).hasMessageContaining("Check the path");
        assertThat(problem(folder)).hasMessageContaining("found a folder");
    }

    @Test
    void emptyBlankHeaderOnlyAndOneRow() {
        assertThat(problem("")).hasMessageContaining("an empty file");
        assertThat(problem("\n\n  \n")).hasMessageContaining("only blank lines");
        assertThat(problem(good.substring(0, good.indexOf('\n') + 1))).hasMessageContaining("the header only");
        String[] lines = good.split("\n", 3);
        assertThat(problem(lines[0] + "\n" + lines[1] + "\n")).hasMessageContaining("one row");
    }

    @Test
    void textInANumberColumn() {
        InputProblem problem = problem(withCell(1234, 4, "broken"));
        assertThat(problem.row()).hasValue(1234);
        assertThat(problem.column()).contains("yaw rate [rad/s]");
        assertThat(problem.value()).contains("broken");
        // Far beyond the part that is looked at first.
        InputProblem late = problem(withCell(5900, 1, "1.2.3"));
        assertThat(late.row()).hasValue(5900);
        assertThat(late.column()).contains("speed [m/s]");
    }

    @Test
    void nothingButMissingValues() {
        String[] lines = good.split("\n", -1);
        StringBuilder text = new StringBuilder(lines[0]).append('\n');
        for (int i = 1; i < 3000; i++) {
            text.append("NaN,".repeat(10)).append("NaN\n");
        }
        assertThat(problem(text.toString())).hasMessageContaining("number");
        StringBuilder column = new StringBuilder(lines[0]).append('\n');
        for (int i = 1; i < 3000; i++) {
            String[] cells = lines[i].split(",", -1);
            cells[1] = "nan";
            column.append(String.join(",", cells)).append('\n');
        }
        assertThat(problem(column.toString())).hasMessageContaining("speed");
    }

    @Test
    void timeRunningBackwards() {
        InputProblem problem = problem(withCell(2001, 0, "3.5"));
        assertThat(problem.row()).hasValue(2001);
        assertThat(problem.column()).contains("time [s]");
        assertThat(problem).hasMessageContaining("39.96").hasMessageContaining("3.5");
    }

    @Test
    void duplicatedHeader() {
        InputProblem problem = problem(good.replace("yaw rate [rad/s]", "Speed [m/s]"));
        assertThat(problem.row()).hasValue(1);
        assertThat(problem).hasMessageContaining("columns 2 and 5");
    }

    @Test
    void filesThatAreNoTables() throws IOException {
        assertThat(problem("{\"laps\": [1, 2, 3], \"speed\": [3.0, 4.0]}\n")).hasMessageContaining("JSON");
        assertThat(problem("<html><body>1,2,3</body></html>\n")).hasMessageContaining("HTML");
        assertThat(problem("It was a dark night, and the rain fell.\nNobody spoke; the car stood still.\n".repeat(50)))
                .hasMessageContaining("No delimiter");
        byte[] binary = new byte[100_000];
        new Random(SEED).nextBytes(binary);
        assertThat(problem(Files.write(folder.resolve("noise.csv"), binary))).hasMessageContaining("binary");
        assertThat(problem(Files.write(folder.resolve("zeros.csv"), new byte[5000])))
                .hasMessageContaining("binary");
        byte[] broken = new byte[2000];
        broken[0] = 0x1F;
        broken[1] = (byte) 0x8B;
        assertThat(problem(Files.write(folder.resolve("broken.csv.gz"), broken)))
                .hasMessageContaining("gzip");
    }

    @Test
    void noHeader() {
        assertThat(problem(good.substring(good.indexOf('\n') + 1))).hasMessageContaining("header");
    }

    @Test
    void endlessLine() {
        assertThat(problem("1,".repeat(600_000))).hasMessageContaining("a line of more than");
    }

    @Test
    void hugeJunkIsRefusedFromItsFirstMegabyte() throws IOException {
        // Sparse: two gigabytes on paper, nothing on disk.
        Path file = folder.resolve("junk.csv");
        try (var channel = java.nio.channels.FileChannel.open(
                file, java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)) {
            channel.position(2L << 30);
            channel.write(java.nio.ByteBuffer.wrap(new byte[] {1}));
        }
        assertThat(problem(file)).hasMessageContaining("binary");
    }

    @Test
    void junkBehindAGoodBeginning() throws IOException {
        byte[] start = good.getBytes(StandardCharsets.UTF_8);
        Path file = folder.resolve("tail.csv");
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(start);
            byte[] junk =
                    "lorem ipsum dolor sit amet, consectetur\n".repeat(1000).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 300; i++) {
                out.write(junk);
            }
        }
        InputProblem problem = problem(file);
        assertThat(problem.row()).hasValue(6002);
        assertThat(problem.value()).hasValueSatisfying(text -> assertThat(text).contains("lorem"));
        Path cut = folder.resolve("cut.csv.gz");
        java.io.ByteArrayOutputStream packed = new java.io.ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(packed)) {
            for (int i = 0; i < 20; i++) {
                out.write(start);
            }
        }
        byte[] whole = packed.toByteArray();
        for (int length : List.of(10, whole.length / 2)) {
            assertThat(problem(Files.write(cut, Arrays.copyOf(whole, length))))
                    .hasMessageContaining("cut short")
                    .hasMessageNotContaining(folder.toString());
        }
    }

    @Test
    void missingSteeringSpeedOrTime() {
        SyntheticRun run = new SyntheticRun(SEED, 60.0);
        for (String gone : List.of("steer", "v", "t")) {
            List<Writing> left = SyntheticRun.plain(true).stream()
                    .filter(w -> !w.column().equals(gone))
                    .toList();
            String what = gone.equals("steer") ? "steering" : gone.equals("v") ? "speed" : "time";
            assertThat(problem(run.csv(left, ',', false))).hasMessageContaining(what);
        }
    }

    @Test
    void constantSteering() {
        SyntheticRun run = new SyntheticRun(SEED, 60.0);
        List<Writing> writings =
                SyntheticRun.replaced(SyntheticRun.plain(true), new Writing("steer", "steering [rad]", 0.0));
        assertThat(problem(run.csv(writings, ',', false)))
                .hasMessageContaining("steering")
                .hasMessageContaining("never changes");
        List<Writing> empty =
                SyntheticRun.replaced(SyntheticRun.plain(true), new Writing("steer", "steering [rad]", Double.NaN));
        assertThat(problem(run.csv(empty, ',', false))).hasMessageContaining("holds no number");
    }

    @Test
    void tooFewRows() {
        String[] lines = good.split("\n", 12);
        assertThat(problem(String.join("\n", Arrays.copyOf(lines, 11)) + "\n")).hasMessageContaining("rows");
    }
}
