package setwright.core.proposal;

import java.util.List;
import java.util.Map;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;

/** Invented findings that a change is wanted for. */
final class Targets {
    private Targets() {}

    /** Returns one in the middle of corners. */
    static Finding mid(BalanceSign balance, SpeedRange speed) {
        return new Finding(
                Phase.MID,
                speed,
                balance,
                Trigger.NONE,
                Map.of(Trigger.NONE, 1.0),
                Finding.Cause.CAR,
                List.of(1, 2),
                1.0,
                true,
                0.9,
                0.01,
                0.005,
                0.015,
                new Finding.Price(0.2, 0.1, 0.3),
                List.of());
    }
}
