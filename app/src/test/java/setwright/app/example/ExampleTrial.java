package setwright.app.example;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import setwright.app.trial.TrialAnswer;
import setwright.core.car.setup.SetupDifference;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;
import setwright.core.replay.Pool;
import setwright.core.trial.Looks;
import setwright.core.trial.TrialJudge;
import setwright.core.trial.TrialLap;
import setwright.core.trial.TrialRun;
import setwright.core.trial.TrialTarget;

/** Invented runs of a trial, without the change, with it, and without again, on a day that gets slower. */
public final class ExampleTrial {
    private static final TrialTarget TARGET =
            new TrialTarget(Phase.MID, SpeedRange.ALL, BalanceSign.UNDERSTEER, List.of(1, 2));

    private ExampleTrial() {}

    /** A change that does what it was to do. */
    public static TrialAnswer answer() {
        Random chance = new Random(3);
        List<TrialRun> runs = List.of(
                run("stint 4", false, 0.0, chance),
                run("<b>stint 5</b>", true, 0.2, chance),
                run("stint 6", false, 0.4, chance));
        return new TrialAnswer(
                List.of(new SetupDifference("front_bar", "5", "4", "position")),
                Optional.empty(),
                List.of(Example.answer(), Example.answer(), Example.answer()),
                TrialJudge.judge(runs, Optional.of(TARGET), Looks.once()),
                Optional.of(ExamplePrediction.one().predictions().get(0)),
                List.of());
    }

    private static TrialRun run(String name, boolean changed, double dayS, Random chance) {
        List<TrialLap> laps = new ArrayList<>();
        for (int lap = 1; lap <= 7; lap++) {
            double moved = changed ? -0.5 : 0.0;
            Map<Pool, Double> balance = new HashMap<>();
            balance.put(Pool.of(Phase.MID, SpeedClass.LOW), Math.toRadians(moved + 0.1 * chance.nextGaussian()));
            balance.put(Pool.of(Phase.EXIT, SpeedClass.HIGH), Math.toRadians(0.1 * chance.nextGaussian()));
            laps.add(new TrialLap(
                    lap,
                    91.0 + dayS + (changed ? -0.9 : 0.0) + 0.15 * chance.nextGaussian(),
                    balance,
                    OptionalDouble.of(Math.toRadians(moved + 0.1 * chance.nextGaussian()))));
        }
        return new TrialRun(name, changed, laps);
    }
}
