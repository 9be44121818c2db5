package setwright.app.demo;

import java.util.Optional;
import setwright.core.judgement.Finding;
import setwright.core.simulation.driver.DriverStyle;

/**
 * What the driver is asked to try with his feet before anyone turns a spanner.
 *
 * @param words  to the driver
 * @param style  how he drives then
 */
public record Technique(String words, DriverStyle style) {
    private static final double LESS_TRAIL = 0.4;
    private static final double LESS_POWER = 0.3;
    private static final double LATER_M = 5.0;

    /** Returns what is worth trying against a finding; empty where the feet have no part in it. */
    static Optional<Technique> against(Finding finding, DriverStyle style) {
        return switch (finding.phase()) {
            case BRAKING, ENTRY ->
                Optional.of(new Technique(
                        "come off the brake earlier: less of it left at turn-in",
                        style.withFeet(
                                Math.max(1.05, style.trail() - LESS_TRAIL), style.power(), style.pickUpEarlyM())));
            case EXIT ->
                Optional.of(new Technique(
                        "wait for the throttle and feed it in more slowly",
                        style.withFeet(
                                style.trail(),
                                Math.max(1.05, style.power() - LESS_POWER),
                                style.pickUpEarlyM() - LATER_M)));
            case MID -> Optional.empty();
        };
    }
}
