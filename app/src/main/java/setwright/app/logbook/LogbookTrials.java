package setwright.app.logbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.logbook.Diary.Kind;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.predict.ChangePredictor;
import setwright.app.propose.ChangeProposer;
import setwright.app.trial.PlanAnswer;
import setwright.app.trial.TrialAnswer;
import setwright.app.trial.TrialChanges;
import setwright.app.trial.TrialChanges.RunSetup;
import setwright.app.trial.TrialRunner;
import setwright.core.car.CarSheet;
import setwright.core.proposal.LearntEffects;
import setwright.core.replay.Prediction;
import setwright.core.trial.Looks;
import setwright.core.trial.PlannedTrial;
import setwright.core.trial.PlannedTrial.Expected;
import setwright.core.trial.RunConditions;
import setwright.core.trial.SetupDifference;
import setwright.core.trial.TrialTarget;
import setwright.core.trial.TrialVerdict;
import setwright.intake.car.CarSheetReader;
import setwright.intake.car.SheetText;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.VerdictRow;

/** Trials of a logbook: planned once, judged as their runs come in. */
public final class LogbookTrials {
    private static final String USUAL_PLAN = "ABA";
    private static final int USUAL_LAPS = 6;

    private final Logbook logbook;
    private final StintDesk desk;
    private final ChangePredictor predictor;

    /** Makes one for a logbook. */
    public LogbookTrials(Logbook logbook, StintDesk desk, ChangePredictor predictor) {
        this.logbook = logbook;
        this.desk = desk;
        this.predictor = predictor;
    }

    /**
     * Plans the trial of a change and opens it; nothing is opened where nothing is proposed.
     *
     * @param laps      the first run, without the change
     * @param words     the change; when empty, what is proposed
     * @param together  why several items belong together
     * @throws LogbookProblem when another trial of the car is under way
     */
    public PlanAnswer plan(
            KeptLaps laps, List<String> words, Optional<String> together, ChangeProposer proposer, Progress progress)
            throws IOException {
        noneUnderWay(laps.stint().car());
        List<SetupDifference> asked = asked(laps.stint(), words, together);
        Answer answer = laps.answer(progress);
        laps.found(answer);
        progress.step("turning each item on the laps");
        PlanAnswer plan = asked.isEmpty()
                ? PlanAnswer.of(answer, proposer.propose(answer.diagnosis(), answer.car(), laps.learnt()))
                : PlanAnswer.of(answer, asked, together, expected(laps, asked, answer));
        if (!plan.changes().isEmpty()) {
            logbook.with(tables -> open(tables, laps.stint(), plan));
        }
        return plan;
    }

    private void noneUnderWay(CarRow car) {
        logbook.with(tables -> tables.trials().open(car.id())).ifPresent(trial -> {
            throw new LogbookProblem("trial " + trial.id() + " (" + trial.changeWords() + ") of " + car.name()
                    + " is under way. Judge it with: setwright trial judge; or give it up with: setwright trial drop.");
        });
    }

    private static List<SetupDifference> asked(KeptStint stint, List<String> words, Optional<String> together) {
        if (words.isEmpty()) {
            return List.of();
        }
        CarSheet before = sheet(stint.setup());
        SheetText after = SetupEdit.of(new SheetText(stint.setup().sheet()), before, words);
        List<SetupDifference> changes =
                SetupDifference.between(before, CarSheetReader.parse("the changed setup", after.text()));
        TrialChanges.oneOrTogether("trial plan", changes, together);
        return changes;
    }

    private Optional<Expected> expected(KeptLaps laps, List<SetupDifference> changes, Answer answer) {
        Optional<TrialTarget> target = TrialTarget.of(answer.diagnosis());
        return TrialRunner.predict(changes, answer, predictor)
                .map(laps.learnt()::update)
                .map(prediction -> new Expected(
                        prediction.lapTimeS().central(),
                        target.flatMap(wanted -> wanted.moved(prediction))
                                .map(effect -> OptionalDouble.of(effect.central()))
                                .orElse(OptionalDouble.empty())));
    }

    private static TrialRow open(Tables tables, KeptStint stint, PlanAnswer plan) {
        tables.trials().open(stint.car().id()).ifPresent(other -> {
            throw new LogbookProblem(
                    "trial " + other.id() + " of " + stint.car().name() + " was opened meanwhile.");
        });
        String words = words(plan.changes());
        long id = tables.trials()
                .add(new TrialRow(
                        0,
                        stint.car().id(),
                        stint.driver().id(),
                        stint.circuit().id(),
                        stint.number(),
                        stint.setup().id(),
                        words,
                        plan.together().orElse(""),
                        order(plan),
                        plan.plans().stream()
                                .findFirst()
                                .map(PlannedTrial::laps)
                                .orElse(USUAL_LAPS),
                        TrialRow.OPEN,
                        Diary.now()));
        tables.trials()
                .add(plan.changes().stream()
                        .map(change -> new TrialItemRow(id, change.item(), change.from(), change.to(), change.unit()))
                        .toList());
        TrialRow trial = tables.trials().find(id).orElseThrow();
        Diary.write(
                tables,
                Kind.TRIAL,
                stint.car().id(),
                Optional.of(stint.number()),
                "Trial " + id + " is planned: " + words + ", runs " + trial.plan() + " of " + trial.lapsARun()
                        + " laps, the first is " + stint.name()
                        + (trial.together().isEmpty() ? "" : "; together: " + trial.together()) + ".");
        return trial;
    }

    /** The shortest order that takes the day out and sees what is expected. */
    private static String order(PlanAnswer plan) {
        return plan.plans().stream()
                .filter(planned -> planned.plan().takesOutTheDay())
                .filter(planned -> plan.expected().filter(planned::sees).isPresent())
                .findFirst()
                .map(planned -> planned.plan().letters())
                .orElse(USUAL_PLAN);
    }

    static String words(List<SetupDifference> changes) {
        return changes.stream()
                .map(change -> change.item() + " " + change.from() + " to " + change.to()
                        + (change.unit().isEmpty() ? "" : " " + change.unit()))
                .collect(Collectors.joining(", "));
    }

    /**
     * Gives up the trial of a car that is under way.
     *
     * @return what was given up
     */
    public TrialRow drop(Optional<String> car) {
        return logbook.with(tables -> {
            TrialRow trial = underWay(tables, DrivenCar.known(tables, car));
            tables.trials().end(trial.id());
            Diary.write(
                    tables,
                    Kind.TRIAL,
                    trial.carId(),
                    Optional.empty(),
                    "Trial " + trial.id() + " (" + trial.changeWords() + ") is given up.");
            return trial;
        });
    }

    private static TrialRow underWay(Tables tables, CarRow car) {
        return tables.trials()
                .open(car.id())
                .orElseThrow(() -> new LogbookProblem("no trial of " + car.name()
                        + " is under way. Plan one with: setwright trial plan; or judge files: setwright trial judge FILE FILE... --car"
                        + " SHEET --car SHEET."));
    }

    /** The runs of a trial and those that were driven meanwhile with something else. */
    private record Runs(TrialRow trial, List<KeptStint> runs, List<String> aside) {}

    /**
     * Judges the trial of a car that is under way, with all runs that are in the logbook.
     *
     * @return empty as long as there is no run with the change
     */
    public Optional<JudgedTrial> judge(Optional<String> car, Progress progress) throws IOException {
        Runs found = logbook.with(tables -> runs(tables, underWay(tables, DrivenCar.known(tables, car))));
        List<RunSetup> setups = found.runs().stream()
                .map(run -> new RunSetup(run.name(), sheet(run.setup())))
                .toList();
        if (setups.stream()
                .allMatch(setup -> SetupDifference.between(setups.get(0).car(), setup.car())
                        .isEmpty())) {
            return Optional.empty();
        }
        Optional<String> together = Optional.of(found.trial().together()).filter(why -> !why.isEmpty());
        TrialChanges changes = TrialChanges.of(setups, together);
        List<Answer> answers = new ArrayList<>();
        for (KeptStint run : found.runs()) {
            answers.add(desk.new KeptLaps(run).answer(progress));
        }
        progress.step("holding the runs against each other");
        Optional<Prediction> predicted = TrialRunner.predict(changes.changes(), answers.get(0), predictor)
                .map(prediction -> logbook.with(tables -> before(tables, found)).update(prediction));
        int planned = found.trial().plan().length() - 1;
        int look = found.runs().size() - 1;
        int looks = Math.max(planned, look);
        TrialAnswer answer = TrialRunner.judge(
                changes,
                together,
                found.runs().stream().map(KeptStint::name).toList(),
                answers,
                conditions(setups, found.runs()),
                predicted,
                new Looks(look, looks));
        JudgedTrial judged = new JudgedTrial(found.trial(), answer, look, looks, found.aside());
        logbook.with(tables -> keep(tables, found, judged));
        return Optional.of(judged);
    }

    private static List<RunConditions> conditions(List<RunSetup> setups, List<KeptStint> runs) {
        List<RunConditions> conditions = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            conditions.add(new RunConditions(
                    setups.get(i).conditions().fuelStartKg(),
                    runs.get(i).stint().tyreAgeLaps(),
                    runs.get(i).stint().trackCelsius()));
        }
        return conditions;
    }

    private static LearntEffects before(Tables tables, Runs found) {
        KeptStint first = found.runs().get(0);
        return Learnt.before(tables, first.car(), first.circuit(), found.trial().id());
    }

    private static Runs runs(Tables tables, TrialRow trial) {
        CarSheet before = sheet(tables.setups().get(trial.beforeId()));
        List<TrialItemRow> items = tables.trials().items(trial.id());
        List<KeptStint> runs = new ArrayList<>();
        List<String> aside = new ArrayList<>();
        for (StintRow row :
                tables.stints().since(trial.firstStintId(), trial.carId(), trial.driverId(), trial.circuitId())) {
            KeptStint stint = KeptStint.of(tables, row);
            List<SetupDifference> changes = SetupDifference.between(before, sheet(stint.setup()));
            boolean tried = changes.stream()
                    .map(change ->
                            new TrialItemRow(trial.id(), change.item(), change.from(), change.to(), change.unit()))
                    .toList()
                    .equals(items);
            if (changes.isEmpty() || tried) {
                runs.add(stint);
            } else {
                aside.add("Stint " + stint.number() + " does not count: it was driven with "
                        + TrialChanges.words(changes) + ".");
            }
        }
        return new Runs(trial, runs, aside);
    }

    private static long keep(Tables tables, Runs found, JudgedTrial judged) {
        TrialRow trial = found.trial();
        String runs =
                found.runs().stream().map(run -> String.valueOf(run.number())).collect(Collectors.joining(","));
        Optional<VerdictRow> before = tables.verdicts().after(trial.id(), runs);
        if (before.isPresent()) {
            return before.get().id();
        }
        TrialVerdict verdict = judged.answer().trial().verdict();
        long id = tables.verdicts()
                .add(new VerdictRow(
                        0,
                        trial.id(),
                        runs,
                        judged.look(),
                        judged.looks(),
                        verdict.words(),
                        judged.answer().trial().reason(),
                        Diary.now()));
        tables.verdicts().add(TriedEffects.of(id, judged.answer()));
        if (verdict != TrialVerdict.UNDECIDED) {
            tables.trials().end(trial.id());
        }
        Diary.write(
                tables,
                Kind.VERDICT,
                trial.carId(),
                Optional.empty(),
                "Trial " + trial.id() + " (" + trial.changeWords() + ") after stints " + runs.replace(",", ", ") + ": "
                        + verdict.words() + ". " + judged.answer().trial().reason());
        return id;
    }

    private static CarSheet sheet(SetupRow setup) {
        return CarSheetReader.parse("setup " + setup.number(), setup.sheet());
    }
}
