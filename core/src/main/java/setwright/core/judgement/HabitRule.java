package setwright.core.judgement;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Slide;

/**
 * One habit: what it is called, how it shows in a pass, how large it is there.
 *
 * @param kind     in plain words
 * @param unit     of the size
 * @param shows    in a pass
 * @param size     in a pass, in the unit
 * @param every    share of the corners from which on it is how somebody drives
 */
record HabitRule(
        String kind, String unit, Predicate<CornerPass> shows, ToDoubleFunction<CornerPass> size, double every) {
    /** Longer than easing off a trailed brake takes (a quarter to half a second, common practice). */
    static final double BRAKE_HELD_S = 0.5;
    /**
     * Exponent of the ellipse of friction from which on more is asked for than the car has: half way from what steady models of four
     * cars leave (1.3 to 1.9, 1.65 in the mean) to a round circle (2). Good simulated drivers ask for 1.4 to 1.75.
     */
    static final double BEYOND = 1.85;

    static final double CLEAR_PEDAL_MOVE = 0.15;
    /** Less braking than this in a corner is a dab that no tyre minds, share of the pedal. */
    private static final double REAL_BRAKING = 0.15;
    /** Beside a quarter of the cornering the circle leaves 97 % for the throttle: a lift there has another reason. */
    private static final double STILL_CORNERS = 0.25;
    /** A throttle opened earlier than a driver reacts (0.2 s, value from memory) is opened before he knows that the car turns. */
    private static final double EARLY_S = 0.2;

    private static final double OVERLAP_S = 0.2;
    private static final double COASTING_S = 0.5;
    private static final double LIMITER_S = 0.15;
    static final double MOST_CORNERS = 0.5;
    /** As for findings: a quarter of the corners. */
    private static final double MANY_CORNERS = 0.25;

    static final String TRAILED = "brake trailed deeper than the tyres have left beside the cornering";
    static final String HELD = "brake held into the middle of the corner";
    static final String TOO_EARLY = "throttle too early: opened, then closed again while the car still corners";

    static final String TOO_MUCH = "throttle opened further than the driven tyres have left beside the cornering";

    static final String LIFTED = "throttle picked up, then lifted";

    static final String DEEPER = "brake trailed deeper into the corner than in the baseline";
    static final String FURTHER = "throttle opened sooner or further than in the baseline";

    static final Set<String> SINCE_THE_BASELINE = Set.of(DEEPER, FURTHER);

    private static final String ANSWERED = "throttle opened before the path is tightest, and the car answers";

    static final Set<String> OF_THE_BRAKE = Set.of(TRAILED, HELD, DEEPER);
    static final Set<String> OF_THE_THROTTLE = Set.of(TOO_EARLY, TOO_MUCH, ANSWERED, LIFTED, FURTHER);

    static final Set<String> OF_THE_LIFT = Set.of(TOO_EARLY, LIFTED);

    static final List<HabitRule> ALL = List.of(
            new HabitRule(
                    HELD,
                    "s",
                    pass -> brakeHeld(pass.habits()),
                    pass -> pass.habits().brakeHeldS(),
                    MOST_CORNERS),
            new HabitRule(
                    TRAILED,
                    "share of hardest braking",
                    HabitRule::trailed,
                    pass -> pass.habits().brakeInBend(),
                    MOST_CORNERS),
            new HabitRule(
                    TOO_EARLY,
                    "share of throttle",
                    HabitRule::liftedInBend,
                    pass -> pass.habits().liftAfter(),
                    MOST_CORNERS),
            new HabitRule(
                    TOO_MUCH,
                    "on a scale where 2 is a round friction circle",
                    pass -> pass.habits().driveShape() > BEYOND,
                    pass -> pass.habits().driveShape(),
                    MOST_CORNERS),
            new HabitRule(
                    ANSWERED,
                    "s",
                    HabitRule::openedAndAnswered,
                    pass -> pass.habits().pickUpEarlyS(),
                    MANY_CORNERS),
            new HabitRule(
                    LIFTED,
                    "share of throttle",
                    pass -> lifted(pass.habits()),
                    pass -> pass.habits().liftAfter(),
                    MANY_CORNERS),
            new HabitRule(
                    "throttle and brake together",
                    "s",
                    pass -> pass.habits().overlapS() > OVERLAP_S,
                    pass -> pass.habits().overlapS(),
                    MOST_CORNERS),
            new HabitRule(
                    "brake squeezed again after easing",
                    "share of brake",
                    pass -> pass.habits().brakeAgain() > CLEAR_PEDAL_MOVE,
                    pass -> pass.habits().brakeAgain(),
                    MANY_CORNERS),
            new HabitRule(
                    "coasting with neither pedal",
                    "s",
                    pass -> pass.habits().coastS() > COASTING_S,
                    pass -> pass.habits().coastS(),
                    MOST_CORNERS),
            new HabitRule(
                    "on the engine's limiter",
                    "s",
                    pass -> pass.habits().limiterS() > LIMITER_S,
                    pass -> pass.habits().limiterS(),
                    MANY_CORNERS),
            new HabitRule(
                    "sawing at the wheel that the car does not call for",
                    "reversals per s",
                    pass -> hands(pass, HandsEvent.Kind.SAWING) && pass.slides().isEmpty(),
                    pass -> pass.habits().reversalsPerS(),
                    MANY_CORNERS));

    /** Tells whether a corner can show it: only where the brakes are used, a foot can do wrong with them. */
    boolean applies(List<CornerPass> passes) {
        Predicate<CornerPass> can = kind.equals(TRAILED)
                ? pass -> Double.isFinite(pass.habits().trailShape())
                : kind.equals(HELD) ? pass -> pass.habits().brakePeak() > REAL_BRAKING : pass -> true;
        return 2 * passes.stream().filter(can).count() > passes.size();
    }

    /**
     * Tells whether it is only named when it is, or may be, how somebody drives. Good drivers trail deeper than the car leaves in up to a
     * third of the corners they brake for, and ease the throttle again in up to half of theirs (simulated drivers).
     */
    boolean onlyAsHabit() {
        return kind.equals(TRAILED) || kind.equals(TOO_EARLY) || kind.equals(TOO_MUCH);
    }

    /**
     * Returns the exponent of friction that is judged by its median over the corners rather than by a count of corners: half of them
     * may lie just below. NaN for other habits.
     */
    double exponent(CornerPass pass) {
        return kind.equals(TRAILED)
                ? pass.habits().trailShape()
                : kind.equals(TOO_MUCH) ? pass.habits().driveShape() : Double.NaN;
    }

    static boolean brakeHeld(Habits habits) {
        return habits.brakeHeldS() > BRAKE_HELD_S;
    }

    static boolean lifted(Habits habits) {
        return habits.liftAfter() > CLEAR_PEDAL_MOVE;
    }

    /** Tells whether the hands had to answer the car in this pass. */
    static boolean corrected(CornerPass pass) {
        return hands(pass, HandsEvent.Kind.CORRECTION);
    }

    static boolean trailed(CornerPass pass) {
        return pass.habits().trailShape() > BEYOND;
    }

    private static boolean liftedInBend(CornerPass pass) {
        return lifted(pass.habits()) && pass.habits().liftCornering() > STILL_CORNERS;
    }

    /** Behind a pick-up before the tightest point the rear steps out and is caught, or the front runs wide and the hands wind on. */
    private static boolean openedAndAnswered(CornerPass pass) {
        boolean early = pass.habits().pickUpEarlyS() > EARLY_S && !liftedInBend(pass);
        boolean rear = slidAfter(pass, Slide.Axle.REAR) && handsAfter(pass, HandsEvent.Kind.CORRECTION);
        boolean front = slidAfter(pass, Slide.Axle.FRONT) && handsAfter(pass, HandsEvent.Kind.WIND_ON);
        return early && (rear || front);
    }

    private static boolean slidAfter(CornerPass pass, Slide.Axle axle) {
        double pickUp = pass.events().throttlePickUp().orElse(Double.POSITIVE_INFINITY);
        return pass.slides().stream().anyMatch(slide -> slide.axle() == axle && slide.stationM() > pickUp);
    }

    private static boolean handsAfter(CornerPass pass, HandsEvent.Kind kind) {
        double pickUp = pass.events().throttlePickUp().orElse(Double.POSITIVE_INFINITY);
        return pass.hands().stream().anyMatch(event -> event.kind() == kind && event.stationM() > pickUp);
    }

    private static boolean hands(CornerPass pass, HandsEvent.Kind kind) {
        return pass.hands().stream().anyMatch(event -> event.kind() == kind);
    }
}
