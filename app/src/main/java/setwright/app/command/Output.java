package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import setwright.app.evidence.Answer;
import setwright.app.files.WholeFile;
import setwright.app.json.DiagnosisJsonWriter;
import setwright.app.report.Report;
import setwright.app.text.Terminal;
import setwright.app.text.TextReport;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Verdict;

/** Shows an answer the way a call asked for. */
public final class Output {
    private static final int STANDARD_OUTPUT = 1;

    private Output() {}

    /**
     * Prints the answer, writes the report when wanted, and returns the exit code.
     *
     * @throws IOException when the report cannot be written; nothing has been printed then
     */
    static int show(CommandSpec spec, Answer answer, UnitSystem units, boolean json, Optional<Path> report)
            throws IOException {
        if (report.isPresent()) {
            WholeFile.write(report.get(), Report.html(answer, Figures.forPage(units)));
        }
        String text = json
                ? DiagnosisJsonWriter.write(answer)
                : TextReport.write(answer, Figures.forTerminal(units), terminal(spec));
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return answer.diagnosis().verdict() == Verdict.NOT_ENOUGH_EVIDENCE
                ? ExitCode.NOT_ENOUGH_EVIDENCE
                : ExitCode.DONE;
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
