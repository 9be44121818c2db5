package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.json.TrialJsonWriter;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.OpenTrial;
import setwright.app.predict.ChangePredictor;
import setwright.app.report.trial.TrialReport;
import setwright.app.text.TrialText;
import setwright.app.trial.TrialAnswer;
import setwright.app.trial.TrialRequest;
import setwright.app.trial.TrialRunner;
import setwright.core.trial.Looks;
import setwright.core.trial.TrialVerdict;
import setwright.logbook.Logbook;

/** Says whether a change did what it was to do. */
@Command(
        name = "judge",
        description = {
            "Says whether a change of the setup is to be kept or undone, from runs without it and with it.",
            "",
            "Recordings are given in the order in which they were driven, the first one before the change; best is to come back to"
                    + " the first setup at the end. What was changed is read from the car sheets. Lap time and the balance that was"
                    + " to be cured are judged; laps of one run are no replicates, so that the scatter from run to run counts.",
            "Without recordings, the trial that is under way in the logbook is judged with all runs read so far."
        },
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright trial judge a.csv b.csv a2.csv --car a.yaml --car b.yaml",
            "  setwright trial judge --html trial.html",
            "  setwright trial judge --without 14 --why \"red flag\""
        })
public final class TrialJudgeCommand implements Callable<Integer> {
    private static final int MANY_STEPS = 4 * Diagnoser.STEPS + 1;

    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangePredictor predictor;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "Recorded runs, in the order in which they were driven.")
    private List<Path> recordings = new ArrayList<>();

    @Option(
            names = "--car",
            paramLabel = "SHEET",
            description =
                    "Car sheet (YAML) of a run: one for each, or two that take turns; without recordings, the name of the car in"
                            + " the logbook.")
    private List<String> cars = new ArrayList<>();

    @Option(
            names = "--together",
            paramLabel = "WHY",
            description = "Why several items were changed at once; otherwise that is refused.")
    private Optional<String> together = Optional.empty();

    @Option(
            names = "--look",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "Which look at the trial this is; whoever looks often is fooled often. The logbook counts by itself.")
    private int look;

    @Option(names = "--looks", paramLabel = "N", defaultValue = "1", description = "How many looks were planned.")
    private int looks;

    @Option(
            names = "--without",
            paramLabel = "STINT",
            description =
                    "Number of a stint that is to be left out of the logbook's trial, for a reason that has nothing to do with the change.")
    private List<Long> without = new ArrayList<>();

    @Option(names = "--why", paramLabel = "TEXT", description = "Why it is left out, such as red flag.")
    private Optional<String> why = Optional.empty();

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private LogbookOption logbook;

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public TrialJudgeCommand(Diagnoser diagnoser, DeskOpener desk, ChangePredictor predictor) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.predictor = predictor;
    }

    @Override
    public Integer call() throws Exception {
        List<Optional<Path>> inputs = new ArrayList<>(List.of(reading.map(), reading.circuit()));
        recordings.forEach(recording -> inputs.add(Optional.of(recording)));
        OutputFiles.check(inputs, Map.of("--html", showing.html()));
        return recordings.isEmpty() ? kept() : files();
    }

    private int kept() throws IOException {
        if (cars.size() > 1) {
            throw new BadOption("without recordings --car names one car of the logbook, got " + cars.size() + ".");
        }
        if (together.isPresent()
                || look != 1
                || looks != 1
                || reading.map().isPresent()
                || reading.circuit().isPresent()) {
            throw new BadOption(
                    "the logbook knows why items belong together, counts the looks, and has map and circuit: leave out"
                            + " --together, --look, --looks, --map and --circuit, or name recordings.");
        }
        if (without.isEmpty() != why.isEmpty()) {
            throw new BadOption("a stint is left out with its reason: give --without N and --why TEXT together.");
        }
        Logbook opened = logbook.place().open();
        LogbookTrials trials = new LogbookTrials(opened, desk.open(opened), predictor);
        Optional<String> car = cars.stream().findFirst();
        if (!without.isEmpty()) {
            new OpenTrial(opened, car).leaveOut(without, why.orElseThrow());
        }
        Optional<TrialAnswer> judged;
        try (Progress progress = ProgressLine.of(MANY_STEPS)) {
            judged = trials.judge(car, progress);
        }
        if (judged.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "setwright: a trial needs runs without the change and with it that count. Make the change (setwright setup change),"
                                    + " drive, and read the recording in (setwright add).");
            return ExitCode.NOT_ENOUGH_EVIDENCE;
        }
        return show(judged.get());
    }

    private int files() throws IOException {
        if (!without.isEmpty() || why.isPresent()) {
            throw new BadOption(
                    "--without and --why are for trials of the logbook: leave the recording out of the call instead.");
        }
        if (recordings.size() == 1) {
            throw new BadOption("one recording is no trial: name those before the change and with it, in their order.");
        }
        if (cars.size() != recordings.size() && cars.size() != 2) {
            throw new BadOption("--car is to be given once for each of the " + recordings.size()
                    + " recordings, or twice when the setups take turns, got " + cars.size() + " sheets.");
        }
        if (look < 1 || looks < look) {
            throw new BadOption("--look is to be between 1 and --looks, got " + look + " of " + looks + ".");
        }
        List<Path> sheets = new ArrayList<>();
        for (String sheet : cars) {
            sheets.add(InputFiles.existing(Path.of(sheet)));
        }
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS * recordings.size() + 1)) {
            return show(TrialRunner.judge(
                    new TrialRequest(
                            recordings, sheets, reading.map(), reading.circuit(), together, Looks.of(look, looks)),
                    diagnoser,
                    predictor,
                    progress));
        }
    }

    private int show(TrialAnswer answer) throws IOException {
        showing.show(
                spec,
                () -> TrialReport.html(answer, showing.forPage()),
                () -> TrialJsonWriter.write(answer),
                () -> TrialText.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return answer.trial().verdict() == TrialVerdict.UNDECIDED ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
    }
}
