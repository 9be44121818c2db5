package setwright.app.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The image with its own Java, made of what Maven has built, unpacked elsewhere, and started where no Java can be found: its
 * libraries, the native ones among them, and the modules of its Java do for every kind of work.
 *
 * <p>Left out, with the reason, where Maven was not told to write the bill of materials or the JDK cannot make images.
 */
final class DistributionIT {
    private static final Path HOME = Path.of("").toAbsolutePath().getParent();
    private static final Path TARGET = HOME.resolve("target/distribution");
    private static final Path JDK = Path.of(System.getProperty("java.home"), "bin");
    private static final Pattern ADDRESS = Pattern.compile("(?m)^http://127\\.0\\.0\\.1:[0-9]+/$");

    /** Shared: the image is made and unpacked once. */
    @TempDir
    private static Path folder;

    private static Path image = Path.of("");

    @BeforeAll
    static void make() throws Exception {
        Bill.assumeCurrent();
        assumeThat(Stream.of("jlink", "jpackage").map(JDK::resolve).allMatch(Files::isExecutable))
                .as("this JDK has no jlink or no jpackage: " + JDK)
                .isTrue();
        Outcome made =
                finish(start(HOME, "made", List.of(JDK.resolve("java").toString(), ".ci/Distribute.java", "--built")));
        assertThat(made.exitCode()).as(made.messages()).isZero();
        Path packed;
        try (Stream<Path> entries = Files.list(TARGET)) {
            packed = entries.filter(entry -> entry.toString().endsWith(".tar.gz"))
                    .findFirst()
                    .orElseThrow();
        }
        Path elsewhere = Files.createDirectory(folder.resolve("a folder"));
        assertThat(finish(start(elsewhere, "unpacked", List.of("tar", "-xzf", packed.toString())))
                        .exitCode())
                .isZero();
        image = elsewhere.resolve(packed.getFileName().toString().replace(".tar.gz", ""));
    }

    @Test
    void theImageDoesEveryKindOfWorkWithoutAJavaBesideIt() throws Exception {
        Path recording = unpack("stint.csv.gz");
        Path car = unpack("car.yaml");
        assertThat(finish(program("version", "--version")).results()).startsWith("setwright 0.");
        assertThat(finish(program("help", "--help")).results()).contains("Usage: setwright", "Examples:");

        Outcome diagnosed =
                finish(program("diagnosed", "diagnose", recording.toString(), "--car", car.toString(), "--json"));
        assertThat(diagnosed.exitCode()).as(diagnosed.messages()).isZero();
        JsonNode json = JsonMapper.shared().readTree(diagnosed.results());
        assertThat(json.at("/recording/used").size()).isGreaterThan(4);

        Outcome added =
                finish(program("added", "add", recording.toString(), "--car", car.toString(), "--driver", "Ines"));
        assertThat(added.exitCode()).as(added.messages()).isZero();
        served();
        Outcome brief = finish(program("brief", "brief", "1", "--out", "sheet"));
        assertThat(brief.exitCode()).as(brief.messages()).isZero();
        assertThat(Files.readAllBytes(folder.resolve("sheet.pdf")))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    @EnabledIfSystemProperty(
            named = "setwright.nightly",
            matches = "true",
            disabledReason = "takes minutes; -Dsetwright.nightly=true")
    void theImageTellsTheWholeStory() throws Exception {
        Outcome told = finish(program("demo", "demo", "--no-page"));
        assertThat(told.exitCode()).as(told.messages()).isZero();
        assertThat(told.results()).contains("Coach the driver first", "What is true");
    }

    private void served() throws Exception {
        Started serving = program("served", "serve", "--no-browser", "--port", "0");
        try {
            Matcher address = ADDRESS.matcher("");
            while (serving.process().isAlive()
                    && !address.reset(Files.readString(serving.results())).find()) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
            try (InputStream page = URI.create(address.group()).toURL().openStream()) {
                assertThat(new String(page.readAllBytes(), StandardCharsets.UTF_8))
                        .contains("stint.csv.gz");
            }
        } finally {
            serving.process().destroy();
            assertThat(serving.process().waitFor(20, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void aNameThatIsNotPlainAsciiIsOpenedWhateverTheLocale() throws Exception {
        Path sheet = Files.copy(unpack("car.yaml"), folder.resolve("übung.yaml"));
        assertThat(finish(program("checked", "car", "check", sheet.getFileName().toString()))
                        .exitCode())
                .isZero();
    }

    @Test
    void licencesBillManualAndCompletionLieInTheImage() throws Exception {
        assertThat(image.resolve("LICENSE")).isNotEmptyFile();
        assertThat(image.resolve("THIRD-PARTY.md"))
                .content()
                .contains("org.duckdb:duckdb_jdbc", "org.webjars.npm:uplot", "org.webjars.npm:lit-html", "OpenJDK");
        JsonNode bill = JsonMapper.shared().readTree(Files.readString(image.resolve("share/bom.json")));
        assertThat(bill.at("/bomFormat").asString()).isEqualTo("CycloneDX");
        assertThat(bill.at("/components").size()).isGreaterThan(50);
        assertThat(image.resolve("share/man/man1/setwright-trial-judge.1")).isNotEmptyFile();
        assertThat(image.resolve("share/completion.bash")).content().contains("complete -F");
    }

    /** DuckDB's jar holds four platforms' libraries: 240 MB unpacked. */
    @Test
    void nativeCodeOfOtherPlatformsStaysOutside() throws Exception {
        try (Stream<Path> walk = Files.walk(image)) {
            assertThat(walk.map(file -> file.getFileName().toString()).filter(name -> name.startsWith("libduckdb")))
                    .hasSize(1);
        }
    }

    private Path unpack(String name) throws IOException {
        Path file = folder.resolve(name);
        if (!Files.exists(file)) {
            try (InputStream in = DistributionIT.class.getResourceAsStream("/demo/" + name)) {
                Files.copy(in, file);
            }
        }
        return file;
    }

    /** Starts the image's program as on a machine that has no Java, in a plain locale. */
    private Started program(String name, String... arguments) throws IOException {
        List<String> words = new ArrayList<>(List.of(
                "env",
                "-i",
                "PATH=/usr/bin:/bin",
                "LC_ALL=C",
                image.resolve("bin/setwright").toString()));
        words.addAll(List.of(arguments));
        return start(folder, name, words);
    }

    private static Started start(Path where, String name, List<String> words) throws IOException {
        Path results = folder.resolve(name + ".txt");
        Path messages = folder.resolve(name + "-messages.txt");
        Process process = new ProcessBuilder(words)
                .directory(where.toFile())
                .redirectOutput(results.toFile())
                .redirectError(messages.toFile())
                .start();
        return new Started(process, results, messages);
    }

    private static Outcome finish(Started started) throws IOException, InterruptedException {
        int exitCode = started.process().waitFor();
        return new Outcome(exitCode, Files.readString(started.results()), Files.readString(started.messages()));
    }

    private record Started(Process process, Path results, Path messages) {}

    private record Outcome(int exitCode, String results, String messages) {}
}
