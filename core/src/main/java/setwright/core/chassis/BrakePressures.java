package setwright.core.chassis;

import java.util.List;
import java.util.Optional;

/**
 * How both brake circuits share the pressure, and how it is let go.
 *
 * @param share     pressure of the front over that of both, over all braking
 * @param steps     the same from light to hard braking
 * @param growth    share in the hardest step less in the lightest
 * @param force     front share of the brake force, against the sheet; empty where the sheet lacks torques or bias
 * @param releases  by corner, ascending
 * @param laps      judged
 */
public record BrakePressures(
        LapInterval share,
        List<Step> steps,
        LapInterval growth,
        Optional<Force> force,
        List<Release> releases,
        List<Integer> laps) {
    public BrakePressures {
        steps = List.copyOf(steps);
        releases = List.copyOf(releases);
        laps = List.copyOf(laps);
    }

    /**
     * Braking of like strength.
     *
     * @param low    least, as a share of the hardest braking
     * @param high   most
     * @param share  of the front
     */
    public record Step(double low, double high, LapInterval share) {}

    /**
     * Front share of the brake force.
     *
     * @param share        from the pressures and the torque that each circuit makes of them
     * @param sheet        as the sheet has it
     * @param contradicts  whether they differ by more than sensors may err
     */
    public record Force(LapInterval share, double sheet, boolean contradicts) {}

    /**
     * How the brake is let go after turn-in in one corner.
     *
     * @param corner   number
     * @param perTenth share of the pressure at turn-in that goes in 0.1 s, mean of the laps
     * @param scatter  standard deviation over the laps (robust)
     * @param laps     that trail the brake there
     */
    public record Release(int corner, LapInterval perTenth, double scatter, List<Integer> laps) {
        public Release {
            laps = List.copyOf(laps);
        }
    }
}
