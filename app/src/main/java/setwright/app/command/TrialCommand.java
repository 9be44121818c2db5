package setwright.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.json.TrialJsonWriter;
import setwright.app.text.TrialText;
import setwright.app.trial.TrialAnswer;
import setwright.app.trial.TrialRequest;
import setwright.app.trial.TrialRunner;
import setwright.app.units.Figures;
import setwright.core.trial.Looks;
import setwright.core.trial.TrialVerdict;

/** Back to back. */
@Command(
        name = "trial",
        description = "Works with changes that are tried back to back.",
        mixinStandardHelpOptions = true)
public final class TrialCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "A command is missing: trial judge FILE FILE... --car SHEET --car SHEET.");
    }

    /** Says whether a change did what it was to do. */
    @Command(
            name = "judge",
            description = {
                "Says whether a change of the setup is to be kept or undone, from runs without it and with it.",
                "",
                "Recordings are given in the order in which they were driven, the first one before the change; best is to come back to"
                        + " the first setup at the end. What was changed is read from the car sheets. Lap time and the balance that was"
                        + " to be cured are judged; laps of one run are no replicates, so that the scatter from run to run counts."
            },
            mixinStandardHelpOptions = true)
    public static final class Judge implements Callable<Integer> {
        private final Diagnoser diagnoser;

        @Spec
        private CommandSpec spec;

        @Parameters(
                arity = "2..*",
                paramLabel = "FILE",
                description = "Recorded runs, in the order in which they were driven.")
        private List<Path> recordings = new ArrayList<>();

        @Option(
                names = "--car",
                paramLabel = "SHEET",
                description = "Car sheet (YAML) of a run: one for each, or two that take turns.")
        private List<Path> sheets = new ArrayList<>();

        @Option(
                names = "--together",
                paramLabel = "WHY",
                description = "Why several items were changed at once; otherwise that is refused.")
        private Optional<String> together = Optional.empty();

        @Option(
                names = "--look",
                paramLabel = "N",
                defaultValue = "1",
                description = "Which look at the trial this is; whoever looks often is fooled often.")
        private int look;

        @Option(names = "--looks", paramLabel = "N", defaultValue = "1", description = "How many looks were planned.")
        private int looks;

        @Mixin
        private ReadingOptions reading;

        @Option(names = "--json", description = "Prints JSON (docs/trial.schema.json) instead of text.")
        private boolean json;

        @Mixin
        private UnitsOption units;

        /** Makes the command with what does its work. */
        public Judge(Diagnoser diagnoser) {
            this.diagnoser = diagnoser;
        }

        @Override
        public Integer call() throws Exception {
            if (sheets.size() != recordings.size() && sheets.size() != 2) {
                throw new BadOption("--car is to be given once for each of the " + recordings.size()
                        + " recordings, or twice when the setups take turns, got " + sheets.size() + " sheets.");
            }
            if (look < 1 || looks < look) {
                throw new BadOption("--look is to be between 1 and --looks, got " + look + " of " + looks + ".");
            }
            for (Path sheet : sheets) {
                InputFiles.existing(sheet);
            }
            TrialAnswer answer;
            try (Progress progress = ProgressLine.of(Diagnoser.STEPS * recordings.size() + 1)) {
                answer = TrialRunner.judge(
                        new TrialRequest(
                                recordings, sheets, reading.map(), reading.circuit(), together, new Looks(look, looks)),
                        diagnoser,
                        progress);
            }
            PrintWriter out = spec.commandLine().getOut();
            out.print(
                    json
                            ? TrialJsonWriter.write(answer)
                            : TrialText.write(answer, Figures.forTerminal(units.system()), Output.terminal(spec)));
            out.flush();
            return answer.trial().verdict() == TrialVerdict.UNDECIDED ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
        }
    }
}
