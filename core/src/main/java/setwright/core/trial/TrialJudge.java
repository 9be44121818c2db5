package setwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.judgement.Yardstick;
import setwright.core.trial.Trial.More;
import setwright.core.trial.TrialModel.Estimated;

/** Judges a change from runs with and without it. */
public final class TrialJudge {
    /** A thousandth of the lap matters (our choice; half a tenth of a second on most circuits, what a position on the grid is worth). */
    private static final double TIME_SHARE = 0.001;
    /** A quarter of a typical setup change is worth having. */
    private static final double BALANCE_RAD = 0.25 * Yardstick.BALANCE_RAD;
    /** What calibration leaves of one recording. */
    static final double RUN_RAD = 0.1 * Yardstick.BALANCE_RAD;

    private static final int FEWEST_LAPS = 2;
    private static final int MOST_LAPS = 40;
    private static final int MOST_RUNS = 10;

    private final List<TrialRun> runs;
    private final Optional<TrialTarget> target;
    private final TrialModel model;
    private final double lapS;
    private final double level;

    private TrialJudge(List<TrialRun> runs, Optional<TrialTarget> target, Looks looks) {
        this.runs = runs;
        this.target = target;
        this.lapS = runs.stream()
                .flatMap(run -> run.laps().stream())
                .mapToDouble(TrialLap::timeS)
                .average()
                .orElse(Double.NaN);
        this.model = new TrialModel(runs, FuelEffect.of(runs, lapS));
        this.level = target.isPresent() ? 0.5 * looks.level() : looks.level();
    }

    /**
     * Judges.
     *
     * @param runs    in the order in which they were driven; some with the change, some without
     * @param target  what the change is to cure; empty when only lap time counts
     * @param looks   which look at the trial this is
     * @throws IllegalArgumentException when one setup has no run
     */
    public static Trial judge(List<TrialRun> runs, Optional<TrialTarget> target, Looks looks) {
        if (runs.stream().allMatch(TrialRun::changed) || runs.stream().noneMatch(TrialRun::changed)) {
            throw new IllegalArgumentException("a trial needs runs with the change and without");
        }
        int cold = ColdLaps.count(runs);
        List<TrialRun> warm = runs.stream().map(run -> run.without(cold)).toList();
        return new TrialJudge(warm, target, looks).judge(cold);
    }

    private Trial judge(int cold) {
        Optional<Estimated> time =
                enough() ? model.ofTime(TrialLap::timeS, Yardstick.RUN_TIME_SHARE * lapS) : Optional.empty();
        if (time.isEmpty()) {
            return tooFew();
        }
        Optional<Estimated> balance = target.flatMap(wanted -> model.of((run, lap) -> lap.targetRad(), RUN_RAD));
        Optional<TrialEffect> cure = balance.map(
                found -> found.change().times(target.map(TrialTarget::wanted).orElse(1.0)));
        TrialEffect lap = time.get().change();
        TrialVerdict verdict = verdict(lap, cure);
        SideEffects side = new SideEffects(runs, model);
        return new Trial(
                verdict,
                reason(verdict, lap, cure),
                runs,
                target,
                lap,
                TIME_SHARE * lapS,
                cure,
                time.get().day(),
                side.balance(RUN_RAD),
                side.sectors(Yardstick.RUN_TIME_SHARE),
                time.get().fit().betweenDeviation(),
                time.get().fit().withinDeviation(),
                verdict == TrialVerdict.UNDECIDED ? Optional.of(more(time.get(), balance)) : Optional.empty(),
                doubts(time.get(), cure, cold));
    }

    private boolean enough() {
        return runs.stream().allMatch(run -> run.laps().size() >= FEWEST_LAPS);
    }

    private Trial tooFew() {
        TrialEffect nothing = new TrialEffect(
                0.0, Double.POSITIVE_INFINITY, 1.0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 1.0);
        return new Trial(
                TrialVerdict.UNDECIDED,
                "There are too few laps: each run needs " + FEWEST_LAPS
                        + " that can be judged at the least; six are better.",
                runs,
                target,
                nothing,
                TIME_SHARE * lapS,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Double.NaN,
                Double.NaN,
                Optional.of(new More(OptionalInt.of(6), OptionalInt.empty())),
                List.of());
    }

    private TrialVerdict verdict(TrialEffect lap, Optional<TrialEffect> cure) {
        double margin = TIME_SHARE * lapS;
        boolean moved = cure.filter(effect -> effect.clear(level)).isPresent();
        boolean cured = moved && cure.get().value() > 0.0;
        boolean notSlower = lap.value() + lap.reach(0.9) < margin;
        boolean notQuicker = lap.value() - lap.reach(0.9) > -margin;
        if (lap.clear(level)) {
            return lap.value() < 0.0 ? TrialVerdict.KEEP : TrialVerdict.UNDO;
        }
        if (cured && notSlower) {
            return TrialVerdict.KEEP;
        }
        if (moved && !cured && notQuicker) {
            return TrialVerdict.UNDO;
        }
        boolean same = lap.within(margin)
                && cure.map(effect -> effect.within(BALANCE_RAD)).orElse(true);
        return same ? TrialVerdict.NO_DIFFERENCE : TrialVerdict.UNDECIDED;
    }

    private String reason(TrialVerdict verdict, TrialEffect lap, Optional<TrialEffect> cure) {
        boolean byTime = lap.clear(level);
        return switch (verdict) {
            case KEEP ->
                byTime
                        ? "The laps are quicker by more than chance."
                        : "The balance moved as it was to, by more than chance, and the laps are not slower by what matters.";
            case UNDO ->
                byTime
                        ? "The laps are slower by more than chance."
                        : "The balance moved the wrong way, by more than chance, and the laps are not quicker by what matters.";
            case NO_DIFFERENCE ->
                "Whatever the change does to the lap" + (cure.isPresent() ? " and to the balance it was made for" : "")
                        + " is too small to matter.";
            case UNDECIDED -> "These laps leave open whether it helps, harms or does nothing that matters.";
        };
    }

    private More more(Estimated time, Optional<Estimated> balance) {
        More byTime =
                more(time, Math.max(TIME_SHARE * lapS, Math.abs(time.change().value())));
        if (balance.isEmpty()) {
            return byTime;
        }
        More byBalance = more(
                balance.get(),
                Math.max(BALANCE_RAD, Math.abs(balance.get().change().value())));
        return new More(least(byTime.lapsARun(), byBalance.lapsARun()), least(byTime.runsEach(), byBalance.runsEach()));
    }

    private static OptionalInt least(OptionalInt one, OptionalInt other) {
        return IntStream.concat(one.stream(), other.stream()).min();
    }

    /** What brings the interval's reach below the size that is to be seen. */
    private More more(Estimated estimated, double size) {
        double between = Math.pow(estimated.fit().betweenDeviation(), 2);
        double within = Math.pow(estimated.fit().withinDeviation(), 2);
        int laps = (int) Math.round(
                runs.stream().mapToInt(run -> run.laps().size()).average().orElse(0.0));
        double reach = new TDistribution(estimated.change().freedom())
                .inverseCumulativeProbability(1.0 - 0.5 * (level > 0.0 ? level : Looks.LEVEL));
        double ofRuns = model.plan().weights();
        for (int n = laps + 1; n <= MOST_LAPS; n++) {
            if (reach * Math.sqrt(ofRuns * (between + within / n)) < size) {
                return new More(OptionalInt.of(n), OptionalInt.empty());
            }
        }
        for (int r = 2; r <= MOST_RUNS; r++) {
            double weights = 2.0 / r;
            if (weights < ofRuns && reach * Math.sqrt(weights * (between + within / laps)) < size) {
                return new More(OptionalInt.empty(), OptionalInt.of(r));
            }
        }
        return new More(OptionalInt.empty(), OptionalInt.empty());
    }

    private List<String> doubts(Estimated time, Optional<TrialEffect> cure, int cold) {
        List<String> doubts = new ArrayList<>();
        if (cold > 0) {
            doubts.add("The first " + (cold == 1 ? "lap" : cold + " laps")
                    + " of every run " + (cold == 1 ? "was" : "were")
                    + " slow, as on tyres that are not yet warm, and left out.");
        }
        if (!(level > 0.0)) {
            doubts.add(
                    "The planned runs were judged before, and with them all the error that this trial may make is spent: more runs can"
                            + " no longer show a difference beyond chance. Plan a new trial with new runs.");
        }
        doubts.addAll(model.surroundings());
        if (!model.plan().takesOutTheDay()) {
            doubts.add(String.format(
                    Locale.ROOT,
                    "Nothing in these runs tells the change from what else was different between them (track, tyres, fuel, driver):"
                            + " it is taken for %.2f s of scatter from run to run. Drive the first setup once more, and it can be taken"
                            + " out.",
                    time.fit().betweenDeviation()));
        }
        time.day()
                .filter(day -> day.clear(Looks.LEVEL))
                .ifPresent(day -> doubts.add(String.format(
                        Locale.ROOT,
                        "The day moved the lap time by %+.2f s from the first run to the last, whatever the setup; it is taken out as a"
                                + " straight line.",
                        day.value())));
        if (target.isEmpty()) {
            doubts.add("No problem of the car was found on the laps before the change: only the lap time is judged.");
        } else if (cure.isEmpty()) {
            doubts.add("The balance that was to be cured cannot be read in every run: only the lap time is judged.");
        }
        return doubts;
    }
}
