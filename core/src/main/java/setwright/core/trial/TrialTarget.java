package setwright.core.trial;

import java.util.List;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/**
 * What a change is to cure.
 *
 * @param phase    of the corners
 * @param speed    of the corners
 * @param balance  which axle gives up
 * @param corners  their numbers
 */
public record TrialTarget(Phase phase, SpeedRange speed, BalanceSign balance, List<Integer> corners) {
    public TrialTarget {
        corners = List.copyOf(corners);
    }

    /** Returns what a run asks to be cured: its first finding that is the car's and holds round the lap. */
    public static Optional<TrialTarget> of(Diagnosis diagnosis) {
        return diagnosis.findings().stream()
                .filter(finding -> finding.lapWide() && finding.cause() == Finding.Cause.CAR)
                .findFirst()
                .map(TrialTarget::of);
    }

    /** Returns the cure of one finding. */
    public static TrialTarget of(Finding finding) {
        return new TrialTarget(finding.phase(), finding.speed(), finding.balance(), finding.corners());
    }

    /** Returns +1 where more understeer helps, -1 where more oversteer does. */
    public double wanted() {
        return balance == BalanceSign.OVERSTEER ? 1.0 : -1.0;
    }

    /** Returns what a change does to the balance there; in all corners where the laps have none of these speeds. */
    public Optional<Effect> moved(Prediction change) {
        return change.moved(speed.pool(phase));
    }
}
