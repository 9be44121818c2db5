package setwright.core.trial;

import java.util.List;

/**
 * Laps driven in one go.
 *
 * @param name        as people call it
 * @param changed     whether the change was on the car
 * @param conditions  what else is known
 * @param massKg      of the car with driver, without fuel, kg; NaN where it is not known
 * @param laps        that can be judged
 */
public record TrialRun(String name, boolean changed, RunConditions conditions, double massKg, List<TrialLap> laps) {
    public TrialRun {
        laps = List.copyOf(laps);
    }

    /** A run of which nothing else is known. */
    public TrialRun(String name, boolean changed, List<TrialLap> laps) {
        this(name, changed, RunConditions.unknown(), Double.NaN, laps);
    }

    /** Returns this run without its first laps. */
    TrialRun without(int first) {
        return new TrialRun(name, changed, conditions, massKg, laps.subList(Math.min(first, laps.size()), laps.size()));
    }
}
