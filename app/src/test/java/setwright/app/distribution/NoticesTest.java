package setwright.app.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What licences a library of the program may have: {@code .ci/Notices.java}, run as {@code ./distribute} runs it. */
final class NoticesTest {
    private static final Path HOME = Path.of("").toAbsolutePath().getParent();

    @TempDir
    private Path folder;

    private Path libraries = Path.of("");

    @BeforeEach
    void folders() throws IOException {
        libraries = Files.createDirectory(folder.resolve("lib"));
    }

    @Test
    void permissiveLibrariesAreListedAndOneOfSeveralLicencesIsEnough() throws Exception {
        library("plain-1.jar");
        library("choice-2.jar");
        Outcome outcome = run(component("plain", "1", "<license><id>MIT</id></license>")
                + component(
                        "choice", "2", "<license><id>GPL-2.0-only</id></license><license><id>EPL-2.0</id></license>")
                + component("not-shipped", "3", "<license><id>GPL-3.0-only</id></license>"));
        assertThat(outcome.exitCode()).as(outcome.messages()).isZero();
        assertThat(folder.resolve("notices.md"))
                .content()
                .contains("| a.group:plain | 1 | MIT |", "GPL-2.0-only or EPL-2.0")
                .doesNotContain("not-shipped");
    }

    @Test
    void aLibraryUnderTheGplAloneIsRefusedByName() throws Exception {
        library("copyleft-1.jar");
        Outcome outcome = run(component("copyleft", "1", "<license><id>GPL-3.0-only</id></license>"));
        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.messages()).contains("a.group:copyleft 1: GPL-3.0-only is not among the licences");
        assertThat(folder.resolve("notices.md")).doesNotExist();
    }

    @Test
    void aLibraryThatTellsNoLicenceIsRefused() throws Exception {
        library("silent-1.jar");
        assertThat(run(component("silent", "1", "")).messages()).contains("a.group:silent 1: tells no licence");
    }

    @Test
    void aPartOfThePageCountsThoughItHasNoJarOfItsOwn() throws Exception {
        Outcome outcome = run(component("page", "1", "<license><id>GPL-3.0-only</id></license>")
                .replace("a.group", "org.webjars.npm"));
        assertThat(outcome.messages()).contains("org.webjars.npm:page 1");
    }

    @Test
    void aJarThatIsNotOnTheBillIsRefused() throws Exception {
        library("stowaway-1.jar");
        assertThat(run("").messages()).contains("stowaway-1.jar: is not on the bill");
    }

    private void library(String name) throws IOException {
        Files.writeString(libraries.resolve(name), "");
    }

    /** In the form of the CycloneDX specification 1.6. */
    private static String component(String name, String version, String licences) {
        return """
                <component type="library"><group>a.group</group><name>%s</name><version>%s</version>
                <licenses>%s</licenses></component>
                """.formatted(name, version, licences);
    }

    private Outcome run(String components) throws IOException, InterruptedException {
        Path bill = Files.writeString(folder.resolve("bom.xml"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <bom xmlns="http://cyclonedx.org/schema/bom/1.6" version="1"><components>%s</components></bom>
                """.formatted(components));
        Path messages = folder.resolve("messages.txt");
        int exitCode = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HOME.resolve(".ci/Notices.java").toString(),
                        bill.toString(),
                        libraries.toString(),
                        folder.resolve("notices.md").toString())
                .redirectOutput(messages.toFile())
                .redirectErrorStream(true)
                .start()
                .waitFor();
        return new Outcome(exitCode, Files.readString(messages));
    }

    private record Outcome(int exitCode, String messages) {}
}
