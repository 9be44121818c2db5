package setwright.app.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.FileLaps;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.diagnose.StintPooling;
import setwright.app.evidence.Answer;
import setwright.app.evidence.PooledAnswer;
import setwright.app.json.DiagnosisJsonWriter;
import setwright.app.json.PooledJsonWriter;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.propose.ChangeProposer;
import setwright.app.report.Report;
import setwright.app.report.pooled.PooledReport;
import setwright.app.text.PooledText;
import setwright.app.text.TextReport;
import setwright.core.judgement.Verdict;
import setwright.intake.gather.RecordingFiles;

/** Judges one recording, or several of one car, which are then held against each other. */
@Command(
        name = "diagnose",
        description =
                "Says from recorded laps whether the driving repeats, where the car does not follow, what sets it off"
                        + " and what it costs.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright diagnose laps.csv --car car.yaml",
            "  setwright diagnose laps.csv --car car.yaml --html report.html",
            "  setwright diagnose ada.csv bo.csv --car car.yaml --driver Ada --driver Bo",
            "  setwright diagnose laps.mf4 --with track.nmea --car car.yaml",
            "  setwright diagnose bad.csv --car car.yaml --baseline good.csv",
            "  setwright diagnose 12 --json",
            "  setwright diagnose 12 --baseline 7"
        })
public final class DiagnoseCommand implements Callable<Integer> {
    private final Diagnoser diagnoser;
    private final DeskOpener desk;
    private final ChangeProposer proposer;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE|STINT",
            description = LapChoice.WORDS
                    + " Several of one car with one setup on one circuit are also held against each other.")
    private List<String> named = new ArrayList<>();

    @Option(
            names = "--driver",
            paramLabel = "NAME",
            description =
                    "Who drove; with several recordings once for each, in their order, or once for all. Without it each"
                            + " recording counts as a driver of its own.")
    private List<String> drivers = new ArrayList<>();

    @Mixin
    private LapChoice choice;

    @Option(names = "--save-circuit", paramLabel = "FILE", description = "Keeps the circuit in this file.")
    private Optional<Path> saveCircuit = Optional.empty();

    @Option(names = "--write-map", paramLabel = "FILE", description = "Writes the channel map that was used.")
    private Optional<Path> writeMap = Optional.empty();

    @Mixin
    private ShowingOptions showing;

    /** Makes the command with what does its work. */
    public DiagnoseCommand(Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer) {
        this.diagnoser = diagnoser;
        this.desk = desk;
        this.proposer = proposer;
    }

    @Override
    public Integer call() throws Exception {
        Map<String, Optional<Path>> outputs = new LinkedHashMap<>();
        outputs.put("--html", showing.html());
        outputs.put("--save-circuit", saveCircuit);
        outputs.put("--write-map", writeMap);
        List<Optional<Path>> inputs = new ArrayList<>();
        named.forEach(text -> inputs.addAll(choice.inputs(Optional.of(text))));
        OutputFiles.check(inputs, outputs);
        if (named.stream().allMatch(text -> LapChoice.namesStint(Optional.of(text)))) {
            if (saveCircuit.isPresent() || writeMap.isPresent() || !drivers.isEmpty()) {
                throw new BadOption(
                        "a stint of the logbook has its circuit, its map and its driver: leave out --save-circuit,"
                                + " --write-map and --driver.");
            }
            StintDesk stints = desk.open(choice.openLogbook());
            return named.size() < 2 ? one(choice.kept(named.stream().findFirst(), stints)) : several(stints);
        }
        List<RecordingFiles> recordings = choice.recordings(named);
        DiagnoseRequest request = new DiagnoseRequest(
                recordings.get(0),
                choice.car().path(),
                choice.reading().map(),
                choice.reading().circuit(),
                choice.baseline().file(),
                saveCircuit,
                writeMap);
        List<String> names = names();
        return recordings.size() == 1
                ? one(new FileLaps(diagnoser, request))
                : several(progress -> StintPooling.diagnose(
                        diagnoser,
                        request,
                        recordings.stream().skip(1).map(RecordingFiles::main).toList(),
                        names,
                        progress));
    }

    private int one(LapSource laps) throws IOException {
        Answer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS)) {
            answer = laps.answer(progress);
            laps.found(answer);
        }
        showing.show(
                spec,
                () -> Report.html(answer, showing.forPage()),
                () -> DiagnosisJsonWriter.write(
                        answer, proposer.propose(answer.diagnosis(), answer.car(), laps.learnt())),
                () -> TextReport.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return Output.code(answer);
    }

    private int several(StintDesk stints) throws IOException {
        List<KeptLaps> laps = StintDesk.together(named.stream()
                .map(text -> choice.kept(Optional.of(text), stints))
                .toList());
        StintDesk.mustBelongTogether(laps.stream().map(KeptLaps::stint).toList());
        return several(progress -> {
            List<Answer> answers = new ArrayList<>();
            for (KeptLaps one : laps) {
                Answer answer = one.answer(progress);
                one.found(answer);
                answers.add(answer);
            }
            return StintPooling.pool(
                    answers,
                    laps.stream().map(one -> one.stint().driver().name()).toList());
        });
    }

    /** Judges several recordings. */
    private interface Pooling {
        PooledAnswer diagnose(Progress progress) throws IOException;
    }

    private int several(Pooling pooling) throws IOException {
        PooledAnswer answer;
        try (Progress progress = ProgressLine.of(Diagnoser.STEPS * named.size())) {
            answer = pooling.diagnose(progress);
        }
        showing.show(
                spec,
                () -> PooledReport.html(answer, showing.forPage()),
                () -> PooledJsonWriter.write(answer),
                () -> PooledText.write(answer, showing.forTerminal(), Output.terminal(spec)));
        return answer.pooled().verdict() == Verdict.NOT_ENOUGH_EVIDENCE ? ExitCode.NOT_ENOUGH_EVIDENCE : ExitCode.DONE;
    }

    private List<String> names() {
        int count = named.size();
        if (drivers.isEmpty()) {
            return IntStream.rangeClosed(1, count)
                    .mapToObj(number -> "driver " + number)
                    .toList();
        }
        if (drivers.size() != 1 && drivers.size() != count) {
            throw new BadOption("--driver is to be given once for each of the " + count
                    + " recordings, or once for all, got " + drivers.size() + " names.");
        }
        return drivers.size() == count ? drivers : Collections.nCopies(count, drivers.get(0));
    }
}
