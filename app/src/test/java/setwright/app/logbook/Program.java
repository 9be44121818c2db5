package setwright.app.logbook;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import setwright.app.command.AddCommand;
import setwright.app.command.AmendCommand;
import setwright.app.command.BriefCommand;
import setwright.app.command.DeskOpener;
import setwright.app.command.DiagnoseCommand;
import setwright.app.command.ExportCommand;
import setwright.app.command.Failures;
import setwright.app.command.LogCommand;
import setwright.app.command.PredictCommand;
import setwright.app.command.ProposeCommand;
import setwright.app.command.SetupCommand;
import setwright.app.command.TrialCommand;
import setwright.app.command.TrialDropCommand;
import setwright.app.command.TrialJudgeCommand;
import setwright.app.command.TrialPlanCommand;
import setwright.app.command.TrialTriedCommand;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.predict.LapReplay;
import setwright.core.judgement.Diagnostician;
import setwright.core.proposal.Proposer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands that work with a logbook, run one after the other on the same one, as on a day at the circuit. */
final class Program {
    private final List<String> place;
    private StringWriter results = new StringWriter();
    private StringWriter messages = new StringWriter();

    Program(String... place) {
        this.place = List.of(place);
    }

    /** Runs a call, such as {@code run("setup", "show")}; returns its exit code. */
    int run(Object... words) {
        results = new StringWriter();
        messages = new StringWriter();
        List<String> arguments = new ArrayList<>();
        for (Object word : words) {
            arguments.add(word.toString());
        }
        arguments.addAll(place);
        FileDiagnoser files = new FileDiagnoser(Diagnostician::diagnose);
        DeskOpener desk = logbook -> new StintDesk(logbook, Diagnostician::diagnose);
        return new CommandLine(new Root())
                .addSubcommand(new AddCommand(desk))
                .addSubcommand(new AmendCommand())
                .addSubcommand(new SetupCommand())
                .addSubcommand(new LogCommand())
                .addSubcommand(new ExportCommand(files, desk, Proposer::propose))
                .addSubcommand(new BriefCommand(files, desk, Proposer::propose))
                .addSubcommand(new DiagnoseCommand(files, desk, Proposer::propose))
                .addSubcommand(new ProposeCommand(files, desk, Proposer::propose))
                .addSubcommand(new PredictCommand(files, desk, LapReplay::predict))
                .addSubcommand(new CommandLine(new TrialCommand())
                        .addSubcommand(new TrialPlanCommand(files, desk, Proposer::propose, LapReplay::predict))
                        .addSubcommand(new TrialJudgeCommand(files, desk, LapReplay::predict))
                        .addSubcommand(new TrialDropCommand())
                        .addSubcommand(new TrialTriedCommand()))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .execute(arguments.toArray(String[]::new));
    }

    /** Returns what the last call printed. */
    String said() {
        return results.toString();
    }

    /** Returns what the last call printed as JSON. */
    JsonNode tree() {
        return JsonMapper.shared().readTree(said());
    }

    /** Returns what the last call told about its work. */
    String complaint() {
        return messages.toString();
    }

    @CommandLine.Command(name = "setwright")
    private static final class Root {}
}
