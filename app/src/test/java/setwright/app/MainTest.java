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
}
