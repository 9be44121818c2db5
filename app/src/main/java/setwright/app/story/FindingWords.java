package setwright.app.story;

import setwright.app.units.Figures;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Trigger;

/** Short names for findings. */
public final class FindingWords {
    private FindingWords() {}

    /** Returns what is wrong and where: {@code entry oversteer in the slower corners}. */
    public static String name(Finding finding) {
        String where = switch (finding.speed()) {
            case ALL -> "at all speeds";
            case LOW -> "in the slower corners";
            case HIGH -> "in the faster corners";
        };
        return (finding.phase() == Phase.MID ? "mid-corner" : finding.phase().words()) + " "
                + finding.balance().words() + " " + where;
    }

    /** Returns the price of a finding with its interval. */
    public static String price(Finding finding, Figures figures) {
        Finding.Price price = finding.price();
        if (!Double.isFinite(price.seconds())) {
            return "price unknown";
        }
        return figures.seconds(price.seconds(), 2) + " a lap (" + figures.number(price.low(), 2) + " to "
                + figures.number(price.high(), 2) + ")";
    }

    /** Returns when a trigger acts, as part of a sentence. */
    public static String begins(Trigger trigger) {
        return switch (trigger) {
            case BRAKE_APPLICATION -> "as the brake goes on";
            case BRAKE_RELEASE -> "as the brake comes off";
            case TURN_IN -> "as the wheel is turned in";
            case THROTTLE_PICK_UP -> "as the throttle is picked up";
            case THROTTLE_LIFT -> "as the throttle is lifted";
            case BUMP -> "at a bump or kerb";
            case NONE -> "with no single input";
        };
    }

    /** Returns what a gesture of the hands is, in one sentence. */
    public static String meaning(HandsEvent.Kind kind) {
        return switch (kind) {
            case HOLD -> "the wheel is held still while the corner still tightens";
            case CORRECTION -> "the wheel moves against the corner and back";
            case WIND_ON -> "more lock while the path does not tighten";
            case SAWING -> "more reversals than this driver needs elsewhere";
        };
    }
}
