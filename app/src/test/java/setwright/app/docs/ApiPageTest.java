package setwright.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.scoreboard.Home;
import setwright.core.recording.Recording;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** The programs of docs/api.md compile, run, and print what the page says. */
final class ApiPageTest {
    private static final Pattern BLOCK = Pattern.compile("```(java|text)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern CLASS = Pattern.compile("public class (\\w+)");

    @TempDir
    private Path folder;

    @Test
    void theCoreAloneGoesFromArraysToAPrediction() throws Exception {
        List<String> core = Pattern.compile(File.pathSeparator)
                .splitAsStream(classPath())
                .filter(entry -> entry.contains("hipparchus")
                        || entry.contains("setwright-core")
                        || Path.of(entry).endsWith(Path.of("core", "target", "classes")))
                .toList();
        assertThat(run(blocks("java").get(0), String.join(File.pathSeparator, core)))
                .isEqualTo(blocks("text").get(0));
    }

    @Test
    void aFileBecomesARecording() throws Exception {
        Path laps = Home.cases().resolve("practice-03/stint1.csv.gz");
        Path car = Home.cases().resolve("practice-03/car.yaml");
        Recording expected = RecordingReader.read(laps, Optional.empty(), Optional.of(CarSheetReader.read(car)))
                .recording();
        assertThat(run(blocks("java").get(1), classPath(), laps.toString(), car.toString()))
                .startsWith(String.format(
                        Locale.ROOT,
                        "%d samples at %.1f Hz of %d quantities\n",
                        expected.sampleCount(),
                        expected.sampleRateHz(),
                        expected.quantities().size()));
    }

    private static List<String> blocks(String language) throws IOException {
        Matcher blocks = BLOCK.matcher(Files.readString(Path.of("../docs/api.md")));
        List<String> found = new ArrayList<>();
        while (blocks.find()) {
            if (blocks.group(1).equals(language)) {
                found.add(blocks.group(2));
            }
        }
        return found;
    }

    /** Surefire may hide the class path in the manifest of a jar; its own property has it in full. */
    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private String run(String source, String libraries, String... arguments) throws Exception {
        Matcher name = CLASS.matcher(source);
        assertThat(name.find()).isTrue();
        Path file = Files.writeString(folder.resolve(name.group(1) + ".java"), source);
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter complaints = new StringWriter();
        boolean compiled = compiler.getTask(
                        complaints,
                        null,
                        null,
                        List.of("-proc:none", "-d", folder.toString(), "-cp", libraries),
                        null,
                        compiler.getStandardFileManager(null, null, null).getJavaFileObjects(file))
                .call();
        assertThat(compiled).as(complaints.toString()).isTrue();
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                folder + File.pathSeparator + libraries,
                name.group(1)));
        call.addAll(List.of(arguments));
        Process process = new ProcessBuilder(call).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String printed =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        assertThat(process.waitFor()).as(printed).isZero();
        return printed;
    }
}
