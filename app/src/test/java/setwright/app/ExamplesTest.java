package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Each command's help shows how it is used, in words that the command line takes. */
final class ExamplesTest {
    private static final String EXAMPLE = "  ";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** A narrower terminal would break an example into two lines, which could no longer be copied (80: picocli's usual width). */
    private static final int WIDTH = 80;

    private static final CommandLine PROGRAM = Main.commandLine();

    static Stream<String> commands() {
        return all(PROGRAM).map(command -> command.getCommandSpec().qualifiedName());
    }

    private static Stream<CommandLine> all(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(ExamplesTest::all));
    }

    private static CommandLine command(String name) {
        return all(PROGRAM)
                .filter(command -> command.getCommandSpec().qualifiedName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> examples(CommandLine command) {
        return Stream.of(command.getCommandSpec().usageMessage().footer())
                .filter(line -> line.startsWith(EXAMPLE))
                .map(String::strip)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpShowsAnExampleOfThisVeryCommand(String name) {
        CommandLine command = command(name);
        assertThat(command.getUsageMessage()).contains("Examples:");
        assertThat(examples(command))
                .isNotEmpty()
                .anySatisfy(example -> assertThat(example).contains(name));
        assertThat(command.getUsageMessage().lines().map(String::strip)).containsAll(examples(command));
        assertThat(examples(command))
                .allSatisfy(example -> assertThat(EXAMPLE + example).hasSizeLessThan(WIDTH));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void theCommandLineTakesEveryExample(String name) {
        for (String example : examples(command(name))) {
            List<String> words = words(example);
            assertThatCode(() -> PROGRAM.parseArgs(words.toArray(String[]::new)))
                    .as(example)
                    .doesNotThrowAnyException();
        }
    }

    /** The words behind the program's name; what the shell does around them is the shell's. */
    private static List<String> words(String example) {
        String inside = example.replaceFirst("^source <\\((.*)\\)$", "$1").replaceFirst(" > \\S+$", "");
        assertThat(inside).startsWith("setwright ");
        return WORD.matcher(inside)
                .results()
                .skip(1)
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toList();
    }
}
