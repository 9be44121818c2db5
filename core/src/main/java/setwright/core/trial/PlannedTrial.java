package setwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.SimpleRegression;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Yardstick;
import setwright.core.trial.TrialRuns.Diagnosed;

/**
 * What a trial would show with this driver's scatter.
 *
 * @param plan            order of the runs
 * @param laps            of each run, as many as he has just driven
 * @param leastTimeS      least change of lap time that four of five such trials see, s
 * @param leastTargetRad  the same of the balance that is to be cured, rad; empty without a target
 * @param lapsForTime     laps of each run until the predicted change of lap time is seen; empty where forty would not do, or without a prediction
 * @param lapsForTarget   the same for the balance
 */
public record PlannedTrial(
        TrialPlan plan,
        int laps,
        double leastTimeS,
        OptionalDouble leastTargetRad,
        OptionalInt lapsForTime,
        OptionalInt lapsForTarget) {
    private static final List<String> ORDERS = List.of("AB", "ABA", "ABABA");
    private static final int FEWEST_LAPS = 3;
    private static final int MORE_PAIRS = 3;
    private static final int MOST_PAIRS = 10;

    /** What a change is expected to do: lap time, s, and balance of the target, rad; empty without a target. */
    public record Expected(double timeS, OptionalDouble targetRad) {}

    /**
     * Plans with two, three and five runs, and with as many as the expected change takes where these would not do.
     *
     * @param diagnosis  of laps of this driver in this car
     * @param target     what the change is to cure
     * @param expected   of the change; empty when it is not known
     * @return empty with fewer than three laps that can be judged
     */
    public static List<PlannedTrial> of(
            Diagnosis diagnosis, Optional<TrialTarget> target, Optional<Expected> expected) {
        List<TrialLap> laps = TrialRuns.of(List.of(new Diagnosed("laps", false, diagnosis)), target)
                .get(0)
                .laps();
        if (laps.size() < FEWEST_LAPS) {
            return List.of();
        }
        double lapS = laps.stream().mapToDouble(TrialLap::timeS).average().orElseThrow();
        double scatterS = scatter(laps, lap -> OptionalDouble.of(lap.timeS()));
        OptionalDouble scatterRad =
                target.isPresent() ? known(scatter(laps, TrialLap::targetRad)) : OptionalDouble.empty();
        double level = scatterRad.isPresent() ? 0.5 * Looks.LEVEL : Looks.LEVEL;
        Scatter scatter = new Scatter(laps.size(), scatterS, Yardstick.RUN_TIME_SHARE * lapS, scatterRad, level);
        List<PlannedTrial> planned = new ArrayList<>();
        for (String order : ORDERS) {
            planned.add(scatter.planned(TrialPlan.of(order), expected));
        }
        if (expected.isPresent() && planned.stream().noneMatch(plan -> plan.sees(expected.get()))) {
            IntStream.rangeClosed(MORE_PAIRS, MOST_PAIRS)
                    .mapToObj(pairs -> scatter.planned(TrialPlan.of("AB".repeat(pairs) + "A"), expected))
                    .filter(plan -> plan.sees(expected.get()))
                    .findFirst()
                    .ifPresent(planned::add);
        }
        return planned;
    }

    /** Tells whether the change is seen, in lap time or balance, with as many laps a run as were driven. */
    public boolean sees(Expected expected) {
        return leastTimeS <= Math.abs(expected.timeS())
                || leastTargetRad.orElse(Double.POSITIVE_INFINITY)
                        <= Math.abs(expected.targetRad().orElse(0.0));
    }

    private record Scatter(int laps, double lapS, double runS, OptionalDouble lapRad, double level) {
        PlannedTrial planned(TrialPlan plan, Optional<Expected> expected) {
            return new PlannedTrial(
                    plan,
                    laps,
                    plan.leastVisible(laps, lapS, runS, level),
                    lapRad.isPresent()
                            ? OptionalDouble.of(
                                    plan.leastVisible(laps, lapRad.getAsDouble(), TrialJudge.RUN_RAD, level))
                            : OptionalDouble.empty(),
                    expected.map(wanted -> plan.lapsFor(wanted.timeS(), lapS, runS, level))
                            .orElse(OptionalInt.empty()),
                    expected.filter(wanted ->
                                    lapRad.isPresent() && wanted.targetRad().isPresent())
                            .map(wanted -> plan.lapsFor(
                                    wanted.targetRad().getAsDouble(), lapRad.getAsDouble(), TrialJudge.RUN_RAD, level))
                            .orElse(OptionalInt.empty()));
        }
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Standard deviation about a straight line over the laps, as the trial will take one out; NaN with fewer than three. */
    private static double scatter(List<TrialLap> laps, Function<TrialLap, OptionalDouble> figure) {
        SimpleRegression line = new SimpleRegression();
        laps.forEach(lap -> figure.apply(lap).ifPresent(value -> line.addData(lap.number(), value)));
        return line.getN() < FEWEST_LAPS ? Double.NaN : Math.sqrt(line.getMeanSquareError());
    }
}
