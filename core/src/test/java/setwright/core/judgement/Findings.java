package setwright.core.judgement;

import java.util.List;
import java.util.Map;
import setwright.core.handling.Phase;

/** Invented findings that are the car's. */
public final class Findings {
    private Findings() {}

    /** Returns one in the middle of corners, worth a change. */
    public static Finding mid(BalanceSign balance, SpeedRange speed) {
        return at(Phase.MID, balance, speed);
    }

    /** Returns one in another phase, worth a change. */
    public static Finding at(Phase phase, BalanceSign balance, SpeedRange speed) {
        return of(phase, balance, speed, 0.01, new Finding.Price(0.2, 0.1, 0.3));
    }

    /** Returns one of some size, rad, and price. */
    static Finding mid(BalanceSign balance, SpeedRange speed, double sizeRad, Finding.Price price) {
        return of(Phase.MID, balance, speed, sizeRad, price);
    }

    private static Finding of(Phase phase, BalanceSign balance, SpeedRange speed, double sizeRad, Finding.Price price) {
        return new Finding(
                phase,
                speed,
                balance,
                Trigger.NONE,
                Map.of(Trigger.NONE, 1.0),
                Finding.Cause.CAR,
                List.of(1, 2),
                1.0,
                true,
                0.9,
                sizeRad,
                0.5 * sizeRad,
                1.5 * sizeRad,
                price,
                List.of());
    }
}
