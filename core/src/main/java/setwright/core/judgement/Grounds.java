package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.core.car.model.CarBelief;
import setwright.core.judgement.TimeSince.Difference;
import setwright.core.standing.SetupStanding;

/**
 * What a diagnosis rests on besides the passes, kept so that it can be explained.
 *
 * @param car         what is known of the car after its laps; empty where they were not replayed
 * @param standing    where the setup stands in its ranges
 * @param levels      what is believed of the balance in each place, in driving order
 * @param level       the largest level, whether it became a finding or not
 * @param baseline    a stint of the same car in good order that the balance is held against; empty where there is none
 * @param time        what the laps take more than those of the baseline; empty without one
 * @param considered  everything that was weighed, the surest first, whether it became a finding or not
 */
public record Grounds(
        Optional<CarBelief> car,
        SetupStanding standing,
        List<BelievedLevel> levels,
        Optional<Finding> level,
        Optional<Baseline> baseline,
        Optional<TimeSince> time,
        List<Finding> considered) {
    /** Nothing was looked at. */
    public static final Grounds NONE = new Grounds(
            Optional.empty(),
            SetupStanding.unknown(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());

    public Grounds {
        levels = List.copyOf(levels);
        considered = List.copyOf(considered);
    }

    /** Returns the time that the laps lost against the baseline; empty where they are not clearly slower. */
    public Optional<Difference> lost() {
        return time.flatMap(TimeSince::lost);
    }

    /** Tells whether laps are slower than the baseline's and the setup is another: that may be why. */
    public boolean losesTimeSinceAChange() {
        return lost().isPresent() && !standing.changed().isEmpty();
    }

    /** Tells whether a finding is a level of balance rather than an axle that lets go. */
    public boolean isLevel(Finding finding) {
        return level.filter(finding::isSamePattern).isPresent();
    }
}
