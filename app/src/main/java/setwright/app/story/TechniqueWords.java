package setwright.app.story;

import java.util.List;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.judgement.Finding;
import setwright.core.technique.FirstStep;
import setwright.core.technique.Lever;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;
import setwright.core.technique.TechniqueLever.AtCorner;
import setwright.core.technique.TechniqueLever.Effect;

/** What the driver can do himself, with the laps that show it. */
public final class TechniqueWords {
    /** Standard deviations of a reading: nineteen in twenty lie within. */
    private static final double CLEAR_OF_READING = 2.0;

    private TechniqueWords() {}

    /** Returns one paragraph for each lever. */
    public static List<String> tell(List<TechniqueLever> levers, Figures figures) {
        return levers.stream().map(lever -> tell(lever, figures)).toList();
    }

    private static String tell(TechniqueLever lever, Figures figures) {
        String slower = lever.lever() == Lever.ENTRY_SPEED ? " Slower in pays only if the corner's time says so." : "";
        return move(lever, figures) + " in " + Figures.corners(corners(lever)) + ": " + purpose(lever) + ". "
                + proof(lever, figures) + laps(lever) + slower;
    }

    /** Returns the corners where a lever acts. */
    public static List<Integer> corners(TechniqueLever lever) {
        return lever.corners().stream().map(AtCorner::corner).toList();
    }

    /** Returns what to do, and by how much where the laps prove it. */
    public static String move(TechniqueLever lever, Figures figures) {
        boolean more = lever.move() > 0.0;
        String by = lever.weak() ? "" : ", by " + size(lever, figures); // what the laps do not prove is no instruction
        return switch (lever.lever()) {
            case BRAKE_AT_TURN_IN -> (more ? "More" : "Less") + " brake at turn-in" + by;
            case OVERLAP -> "Brake off " + (more ? "later" : "sooner") + " after turn-in" + by;
            case RELEASE_RATE -> "Let the brake go more " + (more ? "quickly" : "slowly") + by;
            case ENTRY_SPEED -> "Turn in " + (more ? "faster" : "slower") + by;
            case PICK_UP -> "Pick the throttle up " + (more ? "later" : "sooner") + by;
            case OPENING -> "Open the throttle more " + (more ? "quickly" : "slowly") + by;
        };
    }

    private static String size(TechniqueLever lever, Figures figures) {
        double size = Math.abs(lever.move());
        return switch (lever.lever()) {
            case BRAKE_AT_TURN_IN -> figures.percent(size) + " of its peak";
            case OVERLAP -> figures.distance(size);
            case RELEASE_RATE -> figures.percent(size) + " of its peak a second";
            case ENTRY_SPEED ->
                figures.number(figures.units().speed(size / 3.6), 1)
                        + Figures.KEPT_TOGETHER
                        + figures.units().speedUnit();
            case PICK_UP -> figures.seconds(size, 2);
            case OPENING -> figures.percent(size) + " of its travel a second";
        };
    }

    /** Returns what it is for. */
    public static String purpose(TechniqueLever lever) {
        return lever.finding()
                .map(finding -> "against " + FindingWords.name(finding))
                .or(() -> lever.fault().map(fault -> "against " + fault.kind()))
                .orElse("");
    }

    /** Returns what it does, or why these laps cannot say. */
    public static String proof(TechniqueLever lever, Figures figures) {
        return lever.effect()
                .map(effect -> "By your own laps that " + effect(lever, effect, figures) + " (strength "
                        + figures.number(lever.strength(), 2) + "). ")
                .orElseGet(() -> "Weak: " + weakness(lever) + ". " + begin(lever, figures) + " ");
    }

    /** Returns with what to begin where the laps prove nothing: by the fault itself, else by what the driver does already. */
    private static String begin(TechniqueLever lever, Figures figures) {
        return firstStep(lever, figures)
                .orElseGet(() -> canBeFelt(lever)
                        ? "From your usual pass to your better quarter it is " + size(lever, figures)
                                + "; begin with that."
                        : "Vary it on purpose for some laps, by what you can feel: then they will tell.");
    }

    /** Returns what the fault itself asks for; empty where it tells no size. */
    public static Optional<String> firstStep(TechniqueLever lever, Figures figures) {
        return lever.firstStep().map(step -> switch (step.of()) {
            case BRAKE_BESIDE_CORNERING ->
                "When you corner with " + figures.percent(FirstStep.OF_THE_CORNERING)
                        + " of your most you still brake with " + figures.percent(step.usual())
                        + " of your hardest; a car leaves some " + figures.percent(step.aim())
                        + " there. Ease off to that, a little at a time.";
            case PICK_UP ->
                "Some " + figures.seconds(step.aim() - step.usual(), 1)
                        + " later is half way to where the car took as much throttle as you give it there; begin with that.";
        });
    }

    /** Tells whether the driver's own better quarter differs by clearly more than it can be read. */
    private static boolean canBeFelt(TechniqueLever lever) {
        return Math.abs(lever.move()) > CLEAR_OF_READING * lever.lever().resolution();
    }

    private static String weakness(TechniqueLever lever) {
        if (!lever.varies()) {
            return "you hardly vary it from lap to lap, so that these laps cannot show what it does";
        }
        return lever.adjusted() <= TechniqueFinder.FALSE_SHARE
                ? "what it does is clear of chance on these laps, but too small to feel"
                : "what it does is not clear of chance on these laps";
    }

    private static String effect(TechniqueLever lever, Effect effect, Figures figures) {
        return switch (lever.response()) {
            case BALANCE, SLIDE ->
                "takes " + figures.degreesSize(effect.change()) + " ("
                        + figures.number(Math.toDegrees(-effect.high()), 2) + " to "
                        + figures.number(Math.toDegrees(-effect.low()), 2) + ") off "
                        + (lever.response() == TechniqueLever.Response.SLIDE ? "the rear's slides" : balance(lever));
            case LIFT ->
                "saves closing the throttle again by " + figures.percent(-effect.change()) + " ("
                        + figures.number(-100.0 * effect.high(), 0) + " to " + figures.number(-100.0 * effect.low(), 0)
                        + ") of its travel";
            case TIME ->
                "gains " + figures.seconds(-effect.change(), 3) + " (" + figures.number(-effect.high(), 3) + " to "
                        + figures.number(-effect.low(), 3) + ") in each of these corners";
        };
    }

    private static String balance(TechniqueLever lever) {
        return "the "
                + lever.finding()
                        .map(Finding::balance)
                        .map(sign -> sign.words())
                        .orElse("oversteer");
    }

    private static String laps(TechniqueLever lever) {
        if (lever.laps().isEmpty()) {
            return "No lap does it clearly more than the others.";
        }
        return "You do it already on " + Figures.laps(lever.laps())
                + (lever.against().isEmpty() ? "" : ", least on " + Figures.laps(lever.against())) + ".";
    }
}
