package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

final class MainTest {

    private final CommandLine program = Main.commandLine();
    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();

    @BeforeEach
    void catchOutput() {
        program.setOut(new PrintWriter(results)).setErr(new PrintWriter(messages));
    }

    @Test
    void helpIsAResultAndCarriesTheCaution() {
        assertThat(program.execute("--help")).isZero();
        assertThat(results.toString()).contains("Usage: setwright", "checked by a qualified person", "Series rules");
        assertThat(messages.toString()).isEmpty();
    }

    @Test
    void aMissingCommandIsWrongUsage() {
        assertThat(program.execute()).isEqualTo(2);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString()).contains("command is missing", "Usage: setwright");
    }

    @Test
    void anUnknownCommandIsWrongUsage() {
        assertThat(program.execute("gess")).isEqualTo(2);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString()).contains("gess");
    }

    @Test
    void completionNamesTheCommands() {
        assertThat(program.execute("completion")).isZero();
        assertThat(results.toString()).contains("complete -F", "completion");
    }

    /** Only the command that is named is made; nobody can tell. */
    @Test
    void aCommandByItselfIsTheSameAsAmongTheOthers() {
        assertThat(program.getSubcommands()).hasSizeGreaterThan(15);
        program.getSubcommands().forEach((name, command) -> {
            CommandLine alone = Main.commandLineFor(name, "--help");
            assertThat(alone.getSubcommands().get(name).getUsageMessage()).isEqualTo(command.getUsageMessage());
            boolean describes = name.equals("completion") || name.equals("manual");
            assertThat(alone.getSubcommands())
                    .hasSize(describes ? program.getSubcommands().size() : 1);
        });
        assertThat(Main.commandLineFor("--help").getUsageMessage()).isEqualTo(program.getUsageMessage());
        assertThat(Main.commandLineFor("gess").getSubcommands()).hasSameSizeAs(program.getSubcommands());
    }
}
