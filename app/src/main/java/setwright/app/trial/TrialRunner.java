package setwright.app.trial;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.diagnose.SameCircuit;
import setwright.app.evidence.Answer;
import setwright.core.car.CarSheet;
import setwright.core.trial.SetupDifference;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialJudge;
import setwright.core.trial.TrialRuns;
import setwright.core.trial.TrialRuns.Diagnosed;
import setwright.core.trial.TrialTarget;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;

/** Leads from the files of a trial to its verdict. */
public final class TrialRunner {
    private TrialRunner() {}

    /**
     * Reads, judges each run and holds them against each other.
     *
     * @throws IOException   when a file cannot be read
     * @throws InputProblem  when the sheets do not tell one change
     */
    public static TrialAnswer judge(TrialRequest request, Diagnoser diagnoser, Progress progress) throws IOException {
        List<Boolean> changed = new ArrayList<>();
        List<SetupDifference> changes = changes(request, changed);
        List<DiagnoseRequest> requests = new ArrayList<>();
        for (int i = 0; i < request.recordings().size(); i++) {
            requests.add(DiagnoseRequest.of(
                    request.recordings().get(i), Optional.of(request.sheet(i)), request.map(), request.circuit()));
        }
        List<Answer> answers = SameCircuit.diagnose(diagnoser, requests, progress);
        progress.step("holding the runs against each other");
        Optional<TrialTarget> target = TrialTarget.of(answers.get(0).diagnosis());
        List<Diagnosed> runs = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            runs.add(new Diagnosed(
                    name(request, i), changed.get(i), answers.get(i).diagnosis()));
        }
        Trial trial = TrialJudge.judge(TrialRuns.of(runs, target), target, request.looks());
        return new TrialAnswer(changes, request.together(), answers, trial);
    }

    private static String name(TrialRequest request, int run) {
        Path file = request.recordings().get(run).getFileName();
        return file == null ? "run " + (run + 1) : file.toString();
    }

    /** Reads from the sheets what was changed, and in which runs. */
    private static List<SetupDifference> changes(TrialRequest request, List<Boolean> changed) {
        CarSheet before = CarSheetReader.read(request.sheet(0));
        List<SetupDifference> changes = List.of();
        for (int i = 0; i < request.recordings().size(); i++) {
            List<SetupDifference> here = SetupDifference.between(before, CarSheetReader.read(request.sheet(i)));
            changed.add(!here.isEmpty());
            if (!here.isEmpty() && !changes.isEmpty() && !here.equals(changes)) {
                throw InputProblem.in(request.sheet(i).toString())
                        .expected("the first setup or the one that is tried")
                        .found("a third one: " + words(here))
                        .advice("Judge two setups at a time.")
                        .problem();
            }
            changes = here.isEmpty() ? changes : here;
        }
        if (changes.isEmpty()) {
            throw InputProblem.in(request.sheet(request.recordings().size() - 1).toString())
                    .expected("a setup that differs from that of the first run")
                    .found("the same values throughout")
                    .advice("Give each run the car sheet that it was driven with.")
                    .problem();
        }
        if (changes.size() > 1 && request.together().isEmpty()) {
            throw InputProblem.in(request.sheet(changed.indexOf(true)).toString())
                    .expected("one changed item")
                    .found(changes.size() + ": " + words(changes))
                    .advice(
                            "Of several changes nobody can say which one did it. Change one at a time; where the car or the"
                                    + " rules force these together, say why with --together.")
                    .problem();
        }
        return changes;
    }

    private static String words(List<SetupDifference> changes) {
        return changes.stream()
                .map(change -> change.item() + " " + change.from() + " to " + change.to())
                .collect(Collectors.joining(", "));
    }
}
