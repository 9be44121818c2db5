package setwright.core.judgement;

import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.replay.Pool;

/**
 * A phase with the speeds at which its level of balance counts.
 *
 * @param estimate  of the balance there
 */
record LevelPlace(Phase phase, SpeedRange speed, Estimate estimate) {
    BalanceSign sign() {
        return estimate.meanRad() >= 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
    }

    double direction() {
        return sign().direction();
    }

    double sizeRad() {
        return Math.abs(estimate.meanRad());
    }

    Pool pool() {
        return speed.pool(phase);
    }
}
