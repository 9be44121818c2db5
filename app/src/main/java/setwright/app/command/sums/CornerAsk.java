package setwright.app.command.sums;

import setwright.core.car.worked.Unit;

/** What sums about one corner of a car ask for. */
final class CornerAsk {
    static final Ask SPRING = new Ask("k_s", "spring rate", Unit.N_PER_MM, 1, 2000, "--spring");
    static final Ask MOTION_RATIO =
            new Ask("MR", "motion ratio, spring over wheel travel", Unit.NONE, 0.1, 3, "--motion-ratio");
    static final Ask MASS = new Ask("m", "sprung mass on the wheel", Unit.MASS, 10, 1500, "--mass");

    private CornerAsk() {}
}
