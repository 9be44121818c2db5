package setwright.app.logbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.logbook.Diary.Kind;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.predict.ChangePredictor;
import setwright.app.predict.WrongChange;
import setwright.app.propose.ChangeProposer;
import setwright.app.trial.PlanAnswer;
import setwright.app.trial.TrialAnswer;
import setwright.app.trial.TrialChanges;
import setwright.app.trial.TrialChanges.RunSetup;
import setwright.app.trial.TrialRunner;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupDifference;
import setwright.core.proposal.LearntEffects;
import setwright.core.replay.Prediction;
import setwright.core.trial.Looks;
import setwright.core.trial.PlannedTrial.Expected;
import setwright.core.trial.RunConditions;
import setwright.core.trial.TrialTarget;
import setwright.core.trial.TrialVerdict;
import setwright.intake.car.CarSheetReader;
import setwright.intake.car.SheetText;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.VerdictRow;

/** Trials of a logbook: planned once, judged as their runs come in. */
public final class LogbookTrials {
    private static final String USUAL_PLAN = "ABA";

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
     * Plans the trial of a change and opens it; nothing is opened where nothing is proposed, or too few laps tell the driver's scatter.
     *
     * @param laps      the first run, without the change
     * @param words     the change; when empty, what is proposed
     * @param together  why several items belong together
     * @throws LogbookProblem when another trial of the car is under way, or these laps were judged in one of the same change
     */
    public PlanAnswer plan(
            KeptLaps laps, List<String> words, Optional<String> together, ChangeProposer proposer, Progress progress)
            throws IOException {
        Asked asked = asked(laps, words, together);
        Answer answer = laps.answer(progress);
        laps.found(answer);
        progress.step("turning each item on the laps");
        return opened(
                laps,
                asked.changes().isEmpty()
                        ? PlanAnswer.of(answer, proposer.propose(answer.diagnosis(), answer.car(), laps.learnt()))
                        : planned(laps, answer, asked));
    }

    /**
     * Plans the trial of a change on laps that were judged already, and opens it, as above.
     *
     * @param words  the change, at least one item
     */
    public PlanAnswer plan(KeptLaps laps, Answer answer, List<String> words, Optional<String> together) {
        Asked asked = asked(laps, words, together);
        if (asked.changes().isEmpty()) {
            throw new WrongChange("no change is named that could be tried. Name one, such as front_bar=3.");
        }
        return opened(laps, planned(laps, answer, asked));
    }

    private record Asked(List<SetupDifference> changes, Optional<String> why) {}

    private Asked asked(KeptLaps laps, List<String> words, Optional<String> together) {
        logbook.look(tables -> OpenTrial.none(tables, laps.stint().car()));
        Optional<String> why = together.map(String::strip).filter(text -> !text.isEmpty());
        return new Asked(asked(laps.stint(), words, why), why);
    }

    private PlanAnswer planned(KeptLaps laps, Answer answer, Asked asked) {
        return PlanAnswer.of(answer, asked.changes(), asked.why(), expected(laps, asked.changes(), answer));
    }

    /** Opens a trial, unless nothing is proposed or too few laps tell the driver's scatter. */
    private PlanAnswer opened(KeptLaps laps, PlanAnswer plan) {
        if (plan.changes().isEmpty() || plan.plans().isEmpty()) {
            return plan;
        }
        TrialRow trial = logbook.with(tables -> open(tables, laps.stint(), plan));
        return plan.opened(new PlanAnswer.Opened(trial.id(), trial.plan(), trial.lapsARun()));
    }

    private static List<SetupDifference> asked(KeptStint stint, List<String> words, Optional<String> together) {
        if (words.isEmpty()) {
            return List.of();
        }
        CarSheet before = Setups.sheet(stint.setup());
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
        OpenTrial.none(tables, stint.car()); // somebody else may have opened one meanwhile
        TrialRunsFinder.judgedBefore(tables, stint.stint(), plan.changes(), Long.MAX_VALUE)
                .ifPresent(earlier -> {
                    throw new LogbookProblem(stint.name() + " was judged in trial " + earlier.id()
                            + " of the same change: what it shows is told already. Begin with a new run.");
                });
        String words = TriedChange.words(plan.changes());
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
                        plan.plans().get(0).laps(),
                        TrialRow.OPEN,
                        Diary.now()));
        tables.trials().add(TriedChange.rows(id, plan.changes()));
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

    /**
     * Judges the trial of a car that is under way, with all runs that are in the logbook.
     *
     * @return empty as long as there is no run with the change, or none without
     */
    public Optional<TrialAnswer> judge(Optional<String> car, Progress progress) throws IOException {
        TrialRunsFinder.Runs found = logbook.look(tables -> TrialRunsFinder.find(tables, OpenTrial.of(tables, car)));
        if (found.changed().isEmpty() || found.changed().size() == found.runs().size()) {
            return Optional.empty();
        }
        TrialAnswer answer = weigh(found, progress);
        logbook.with(tables -> keep(tables, found, answer));
        return Optional.of(answer);
    }

    /**
     * Reads the runs of a trial's last verdict once more; writes nothing.
     *
     * @throws LogbookProblem when it was never judged, or its runs are not as they were
     */
    public TrialAnswer review(long number, Progress progress) throws IOException {
        return weigh(
                logbook.look(tables -> TrialRunsFinder.judged(
                        tables,
                        tables.trials()
                                .find(number)
                                .orElseThrow(() -> new LogbookProblem("there is no trial " + number + ".")))),
                progress);
    }

    private TrialAnswer weigh(TrialRunsFinder.Runs found, Progress progress) throws IOException {
        List<RunSetup> setups = found.runs().stream()
                .map(run -> new RunSetup(run.name(), Setups.sheet(run.setup())))
                .toList();
        Optional<String> together = Optional.of(found.trial().together()).filter(why -> !why.isEmpty());
        TrialChanges changes = new TrialChanges(
                found.changes(),
                found.runs().stream().map(found.changed()::contains).toList());
        List<Answer> answers = new ArrayList<>();
        for (KeptStint run : found.runs()) {
            answers.add(desk.new KeptLaps(run).answer(progress));
        }
        progress.step("holding the runs against each other");
        Optional<Prediction> predicted = TrialRunner.predict(
                        changes.changes(), answers.get(changes.firstWithout()), predictor)
                .map(prediction -> logbook.look(tables -> before(tables, found)).update(prediction));
        return TrialRunner.judge(
                        changes,
                        together,
                        found.runs().stream().map(KeptStint::name).toList(),
                        answers,
                        conditions(setups, found.runs()),
                        predicted,
                        new Looks(found.seenBefore(), found.seen()))
                .without(found.aside());
    }

    private static List<RunConditions> conditions(List<RunSetup> setups, List<KeptStint> runs) {
        List<RunConditions> conditions = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            OptionalDouble told = runs.get(i).stint().fuelStartKg();
            conditions.add(new RunConditions(
                    told.isPresent() ? told : setups.get(i).conditions().fuelStartKg(),
                    runs.get(i).stint().tyreAgeLaps(),
                    runs.get(i).stint().trackCelsius()));
        }
        return conditions;
    }

    private static LearntEffects before(Tables tables, TrialRunsFinder.Runs found) {
        KeptStint first = found.runs().get(0);
        return Learnt.before(tables, first.car(), first.circuit(), found.trial().id());
    }

    private static boolean keep(Tables tables, TrialRunsFinder.Runs found, TrialAnswer answer) {
        TrialRow trial = found.trial();
        boolean open = tables.trials()
                .find(trial.id())
                .filter(now -> now.state().equals(TrialRow.OPEN))
                .isPresent();
        if (!open) {
            throw new LogbookProblem("trial " + trial.id() + " was decided or given up meanwhile.");
        }
        if (tables.verdicts().after(trial.id(), found.key()).isPresent()) {
            return false;
        }
        TrialVerdict verdict = answer.trial().verdict();
        long id = tables.verdicts()
                .add(new VerdictRow(
                        0,
                        trial.id(),
                        found.key(),
                        found.seen(),
                        verdict.words(),
                        answer.trial().reason(),
                        Diary.now()));
        tables.verdicts().add(TriedEffects.of(id, answer));
        if (verdict != TrialVerdict.UNDECIDED) {
            tables.trials().end(trial.id());
        }
        Diary.write(
                tables,
                Kind.VERDICT,
                trial.carId(),
                Optional.empty(),
                "Trial " + trial.id() + " (" + trial.changeWords() + ") after stints "
                        + found.key().replace(",", ", ") + ": " + verdict.words() + ". "
                        + answer.trial().reason());
        return true;
    }
}
