package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import setwright.app.documents.Document;

/** The command line takes every command of the pages for newcomers; {@code DocumentsIT} types them at night. */
final class DocumentsParseTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @ParameterizedTest
    @ValueSource(strings = {"tutorial.md", "own-car.md"})
    void everyCommandOfThePageIsOne(String page) throws Exception {
        CommandLine program = Main.commandLine();
        List<String> lines = Document.read(page).steps().stream()
                .flatMap(step -> step.commands().lines())
                .filter(line -> line.startsWith("./setwright "))
                .map(line -> line.replaceFirst(" (\\|\\||>|&&) .*$", ""))
                .toList();
        assertThat(lines).hasSizeGreaterThan(4);
        for (String line : lines) {
            String[] words = WORD.matcher(line)
                    .results()
                    .skip(1)
                    .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                    .toArray(String[]::new);
            assertThatCode(() -> program.parseArgs(words)).as(line).doesNotThrowAnyException();
        }
    }
}
