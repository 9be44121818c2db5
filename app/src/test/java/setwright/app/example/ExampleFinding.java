package setwright.app.example;

import java.util.List;
import java.util.Map;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;

/** A finding that is the car's and that no input sets off. */
public final class ExampleFinding {
    private ExampleFinding() {}

    /** Returns it. */
    public static Finding of(
            Phase phase, SpeedRange speed, BalanceSign balance, List<Integer> corners, Finding.Price price) {
        return new Finding(
                phase,
                speed,
                balance,
                Trigger.NONE,
                Map.of(Trigger.NONE, 1.0),
                Finding.Cause.CAR,
                corners,
                1.0,
                true,
                0.9,
                0.01,
                0.005,
                0.015,
                price,
                List.of());
    }
}
