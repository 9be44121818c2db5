package setwright.app.command;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import setwright.app.evidence.Answer;
import setwright.app.text.Terminal;
import setwright.core.judgement.Verdict;

/** What commands share about their output. */
public final class Output {
    private static final int STANDARD_OUTPUT = 1;

    private Output() {}

    /** Returns the exit code that an answer calls for. */
    static int code(Answer answer) {
        return answer.diagnosis().verdict() == Verdict.NOT_ENOUGH_EVIDENCE
                ? ExitCode.NOT_ENOUGH_EVIDENCE
                : ExitCode.DONE;
    }

    /** Prints an answer. */
    public static void print(CommandSpec spec, String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
    }

    /** Tells whether a person sees standard output at once. */
    static boolean isTerminal() {
        return Terminal.isTerminal(STANDARD_OUTPUT);
    }

    /** Returns what standard output can show. */
    public static Terminal terminal(CommandSpec spec) {
        boolean isTerminal = Terminal.isTerminal(STANDARD_OUTPUT);
        return Terminal.of(
                System.getenv(),
                isTerminal,
                isTerminal ? spec.usageMessage().autoWidth(true).width() : Terminal.USUAL_WIDTH);
    }
}
