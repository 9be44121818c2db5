package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import setwright.app.manual.ManualPage;

/** The manual against the command line that it describes, and against {@code man} where there is one. */
final class ManualTest {
    private static final Pattern KNOWN_LINE = Pattern.compile("\\.(TH|SH|PP|TP|IP|RS|RE|nf|fi|br)( .*)?|[^.'].*|");

    @TempDir
    private Path folder;

    private final CommandLine program = Main.commandLine();
    private final List<ManualPage> pages = ManualPage.of(program);

    private static Stream<CommandLine> all(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(ManualTest::all));
    }

    private String text(CommandLine command) {
        return pages.stream()
                .filter(page -> page.name().equals(command.getCommandSpec().qualifiedName("-")))
                .findFirst()
                .orElseThrow()
                .text();
    }

    @Test
    void thereIsAPageForEachCommand() {
        assertThat(pages).hasSize((int) all(program).count());
        assertThat(pages)
                .extracting(ManualPage::name)
                .contains("setwright", "setwright-trial-judge")
                .doesNotHaveDuplicates();
    }

    /** The order of sections after man-pages(7), which asks for these names (value from memory). */
    @Test
    void aPageHasTheUsualSectionsInTheUsualOrder() {
        assertThat(pages).allSatisfy(page -> {
            assertThat(page.text())
                    .startsWith(".TH \"" + page.name().toUpperCase(Locale.ROOT).replace("-", "\\-") + "\" \"1\"");
            assertThat(page.text())
                    .containsSubsequence(
                            ".SH \"NAME\"",
                            ".SH \"SYNOPSIS\"",
                            ".SH \"DESCRIPTION\"",
                            ".SH \"OPTIONS\"",
                            ".SH \"EXIT STATUS\"",
                            ".SH \"EXAMPLES\"");
            assertThat(page.text().lines())
                    .allMatch(line -> KNOWN_LINE.matcher(line).matches());
        });
    }

    @Test
    void aPageNamesEveryOptionAndCommandAndExitCode() {
        assertThat(all(program)).allSatisfy(command -> {
            String text = text(command);
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertThat(text).contains(option.longestName().replace("-", "\\-"));
            }
            command.getSubcommands()
                    .forEach((name, below) -> assertThat(text)
                            .contains(below.getCommandSpec().qualifiedName("-").replace("-", "\\-")));
            assertThat(text).contains("not enough evidence");
            assertThat(text).doesNotContain("${", "@|");
        });
    }

    @Test
    void manSetsEveryPageWithoutAWarning() throws Exception {
        assumeThat(Stream.of("/usr/bin/man", "/bin/man").map(Path::of).anyMatch(Files::isExecutable))
                .as("there is no man here")
                .isTrue();
        for (ManualPage page : pages) {
            Path file = Files.writeString(folder.resolve(page.name() + ".1"), page.text());
            Path set = folder.resolve("set.txt");
            Path warnings = folder.resolve("warnings.txt");
            ProcessBuilder man = new ProcessBuilder("man", "--warnings", "--local-file", file.toString())
                    .redirectOutput(set.toFile())
                    .redirectError(warnings.toFile());
            man.environment().put("MANWIDTH", "80");
            man.environment().put("LC_ALL", "C.UTF-8");
            assertThat(man.start().waitFor()).isZero();
            assertThat(warnings).as(page.name()).content().isEmpty();
            assertThat(set).content().contains("EXAMPLES", page.name());
        }
    }
}
