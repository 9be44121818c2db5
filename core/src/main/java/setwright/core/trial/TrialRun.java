package setwright.core.trial;

import java.util.List;

/**
 * Laps driven in one go.
 *
 * @param name     as people call it
 * @param changed  whether the change was on the car
 * @param laps     that can be judged
 */
public record TrialRun(String name, boolean changed, List<TrialLap> laps) {
    public TrialRun {
        laps = List.copyOf(laps);
    }
}
