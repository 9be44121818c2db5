package setwright.core.pooling;

import setwright.core.handling.Phase;
import setwright.core.judgement.SpeedRange;

/** Where, in words. */
final class Places {
    private Places() {}

    static String words(Phase phase, SpeedRange speed) {
        String where = switch (phase) {
            case BRAKING -> "under braking";
            case ENTRY -> "on entry";
            case MID -> "mid-corner";
            case EXIT -> "on the exit";
        };
        return where
                + switch (speed) {
                    case ALL -> "";
                    case LOW -> " in the slower corners";
                    case HIGH -> " in the faster corners";
                };
    }
}
