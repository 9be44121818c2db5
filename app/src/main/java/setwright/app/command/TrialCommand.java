package setwright.app.command;

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
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.json.PlanJsonWriter;
import setwright.app.json.TrialJsonWriter;
import setwright.app.propose.ChangeProposer;
import setwright.app.text.PlanText;
import setwright.app.text.TrialText;
import setwright.app.trial.PlanAnswer;
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
                spec.commandLine(),
                "A command is missing: trial plan FILE --car SHEET or trial judge FILE FILE... --car SHEET --car SHEET.");
    }

    /** Says how many laps and runs a trial takes. */
    @Command(
            name = "plan",
            description = {
                "Says how the proposed change is to be tried: how many runs and laps, and what they would show.",
                "",
                "From this driver's scatter on recorded laps, and what is known of the scatter from run to run."
            },
            mixinStandardHelpOptions = true)
    public static final class Plan implements Callable<Integer> {
        private final Diagnoser diagnoser;
        private final ChangeProposer proposer;

        @Spec
        private CommandSpec spec;

        @Mixin
        private RecordingParameter recording;

        @Mixin
        private CarOption car;

        @Mixin
        private ReadingOptions reading;

        @Option(names = "--json", description = "Prints JSON (docs/trial-plan.schema.json) instead of text.")
        private boolean json;

        @Mixin
        private UnitsOption units;

        /** Makes the command with what does its work. */
        public Plan(Diagnoser diagnoser, ChangeProposer proposer) {
            this.diagnoser = diagnoser;
            this.proposer = proposer;
        }

        @Override
        public Integer call() throws Exception {
            car.required(spec, "its setup lists the items that can be turned.");
            PlanAnswer answer;
            try (Progress progress = ProgressLine.of(Diagnoser.STEPS + 1)) {
                Answer judged = diagnoser.diagnose(
                        DiagnoseRequest.of(recording.path(), car.path(), reading.map(), reading.circuit()), progress);
                progress.step("turning each item on the laps");
                answer = PlanAnswer.of(judged, proposer.propose(judged.diagnosis(), judged.car()));
            }
            Output.print(
                    spec,
                    json
                            ? PlanJsonWriter.write(answer)
                            : PlanText.write(answer, Figures.forTerminal(units.system()), Output.terminal(spec)));
            return answer.plans().isEmpty() ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
        }
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
            Output.print(
                    spec,
                    json
                            ? TrialJsonWriter.write(answer)
                            : TrialText.write(answer, Figures.forTerminal(units.system()), Output.terminal(spec)));
            return answer.trial().verdict() == TrialVerdict.UNDECIDED ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
        }
    }
}
