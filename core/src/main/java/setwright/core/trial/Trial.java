package setwright.core.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import setwright.core.replay.Pool;

/**
 * A change that was tried, and what came of it.
 *
 * @param verdict      what to do
 * @param reason       why, in a sentence
 * @param runs         as they were driven
 * @param target       what the change is to cure; empty without one
 * @param lapTimeS     with the change less without, s
 * @param lapTimeBound difference of lap time that matters, s
 * @param targetRad    change of the target's balance, rad, positive: the way that is wanted; empty without a target
 * @param dayS         what the day did to the lap time from the first run to the last, s; empty where it cannot be told from the change
 * @param besides      change of balance elsewhere
 * @param sectors      change of the time of each part of the lap; empty where they cannot be told
 * @param runScatterS  standard deviation of the lap time between runs, s
 * @param lapScatterS  standard deviation of the lap time within a run, s
 * @param more         what would settle it; empty when it is settled
 * @param doubts       in plain sentences
 */
public record Trial(
        TrialVerdict verdict,
        String reason,
        List<TrialRun> runs,
        Optional<TrialTarget> target,
        TrialEffect lapTimeS,
        double lapTimeBound,
        Optional<TrialEffect> targetRad,
        Optional<TrialEffect> dayS,
        List<Besides> besides,
        List<Sector> sectors,
        double runScatterS,
        double lapScatterS,
        Optional<More> more,
        List<String> doubts) {
    public Trial {
        runs = List.copyOf(runs);
        besides = List.copyOf(besides);
        sectors = List.copyOf(sectors);
        doubts = List.copyOf(doubts);
    }

    /**
     * Balance of one phase in one class of corners.
     *
     * @param pool        phase and class
     * @param balanceRad  with the change less without, rad; positive: toward understeer
     * @param clear       whether that is more than chance, all phases and classes together at 5 % (Holm)
     */
    public record Besides(Pool pool, TrialEffect balanceRad, boolean clear) {}

    /**
     * Time of one part of the lap.
     *
     * @param number  of the part, from 1
     * @param timeS   with the change less without, s
     * @param clear   whether that is more than chance, all parts together at 5 % (Holm)
     */
    public record Sector(int number, TrialEffect timeS, boolean clear) {}

    /**
     * What would settle it, were it as large as it looks now or as what matters.
     *
     * @param lapsARun  so many laps in each of these runs; empty where no number would do
     * @param runsEach  else so many runs with each setup, of as many laps as now; empty where ten would not do
     */
    public record More(OptionalInt lapsARun, OptionalInt runsEach) {}
}
