package setwright.app.trial;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.diagnose.SameCircuit;
import setwright.app.evidence.Answer;
import setwright.app.predict.ChangePredictor;
import setwright.app.trial.TrialChanges.RunSetup;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.Modelled;
import setwright.core.car.setup.SetupDifference;
import setwright.core.replay.Prediction;
import setwright.core.trial.Looks;
import setwright.core.trial.RunConditions;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialJudge;
import setwright.core.trial.TrialRuns;
import setwright.core.trial.TrialRuns.Diagnosed;
import setwright.core.trial.TrialTarget;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;

/** Leads from the runs of a trial to its verdict. */
public final class TrialRunner {
    private TrialRunner() {}

    /**
     * Reads files, judges each run and holds them against each other.
     *
     * @throws IOException   when a file cannot be read
     * @throws InputProblem  when the sheets do not tell one change
     */
    public static TrialAnswer judge(
            TrialRequest request, Diagnoser diagnoser, ChangePredictor predictor, Progress progress)
            throws IOException {
        List<RunSetup> setups = new ArrayList<>();
        List<DiagnoseRequest> requests = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < request.recordings().size(); i++) {
            Path sheet = request.sheet(i);
            setups.add(new RunSetup(sheet.toString(), CarSheetReader.read(sheet)));
            requests.add(DiagnoseRequest.of(
                    request.recordings().get(i), Optional.of(sheet), request.map(), request.circuit()));
            names.add(String.valueOf(request.recordings().get(i).getFileName()));
        }
        TrialChanges changes = TrialChanges.of(setups, request.together());
        List<Answer> answers = SameCircuit.diagnose(diagnoser, requests, progress);
        progress.step("holding the runs against each other");
        return judge(
                changes,
                request.together(),
                names,
                answers,
                setups.stream().map(RunSetup::conditions).toList(),
                predict(changes.changes(), answers.get(changes.firstWithout()), predictor),
                request.looks());
    }

    /**
     * Holds runs against each other that have been judged.
     *
     * @param names    of the runs, in the order in which they were driven
     * @param answers  to each of them
     * @param conditions  of each of them, besides the setup
     * @param predicted  what the first of them promised
     */
    public static TrialAnswer judge(
            TrialChanges changes,
            Optional<String> together,
            List<String> names,
            List<Answer> answers,
            List<RunConditions> conditions,
            Optional<Prediction> predicted,
            Looks looks) {
        Optional<TrialTarget> target =
                TrialTarget.of(answers.get(changes.firstWithout()).diagnosis());
        List<Diagnosed> runs = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            runs.add(new Diagnosed(
                    names.get(i),
                    changes.changed().get(i),
                    conditions.get(i),
                    answers.get(i).car().massKg(),
                    answers.get(i).diagnosis()));
        }
        Trial trial = TrialJudge.judge(TrialRuns.of(runs, target), target, looks);
        return new TrialAnswer(changes.changes(), together, answers, trial, predicted, List.of());
    }

    /** Returns what laps promise of a change; empty where an item is a word, is not modelled, or the laps do not allow it. */
    public static Optional<Prediction> predict(
            List<SetupDifference> changes, Answer before, ChangePredictor predictor) {
        List<SetupChange> turned = new ArrayList<>();
        for (SetupDifference change : changes) {
            Optional<SetupItem> item = before.car().item(change.item());
            if (item.isEmpty()
                    || change.to().isEmpty()
                    || new Modelled(before.car()).obstacle(item.get()).isPresent()) {
                return Optional.empty();
            }
            turned.add(new SetupChange(change.item(), item.get().value(), Double.parseDouble(change.to())));
        }
        return before.diagnosis().passes().isEmpty()
                ? Optional.empty()
                : predictor.predict(before.diagnosis(), before.car(), List.of(turned)).stream()
                        .findFirst();
    }
}
