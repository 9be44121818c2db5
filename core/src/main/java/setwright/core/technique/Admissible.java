package setwright.core.technique;

import setwright.core.car.DrivenAxle;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;

/*
 * Design note. A correlation over ten laps may have any sign; only that which physics has a path for is believed. Two paths: braking
 * loads the front and unloads the rear by m a h / L (load transfer), driving the other way; and what a tyre gives along the car it
 * does not give across (friction circle). Where both point one way, the row has that sign; where they disagree, the laps decide.
 * Besides, a cause comes before its effect: the pick-up ends the middle of a corner, so that there it is an answer and no cause.
 *
 *                      entry            middle           exit
 *                      under    over    under    over    under    over
 * brake at turn-in     either   less    more     less    -        -
 * overlap              either   less    more     less    -        -
 * brake release        either   -       slower   -       -        -
 * entry speed          less     less    less     less    less     less
 * pick-up              -        -       -        -       later    later; front drive earlier; all wheels either
 * opening              -        -       -        -       slower   slower; front drive quicker; all wheels either
 *
 * Entry, under: more brake loads the front and takes from its circle. Entry, over, release: quicker gives the rear its load back, and
 * practice asks for smoother; nothing is asserted. Middle, under: who trails longer keeps the front loaded (common practice). Exit,
 * over, front drive: the throttle pulls the front wide and loads the rear.
 */

/** Which moves of a lever physics has a path for. Load transfer and friction circle: mechanics; the rest common practice. */
final class Admissible {
    private Admissible() {}

    /** Returns the move that can cure a problem. */
    static Direction of(Phase phase, BalanceSign balance, Lever lever, DrivenAxle driven) {
        boolean over = balance == BalanceSign.OVERSTEER;
        return switch (phase) {
            case BRAKING -> Direction.NONE;
            case ENTRY -> entry(over, lever);
            case MID -> middle(over, lever);
            case EXIT -> exit(over, lever, driven);
        };
    }

    private static Direction entry(boolean over, Lever lever) {
        return switch (lever) {
            case BRAKE_AT_TURN_IN, OVERLAP -> over ? Direction.LESS : Direction.EITHER;
            case RELEASE_RATE -> over ? Direction.NONE : Direction.EITHER;
            case ENTRY_SPEED -> Direction.LESS;
            case PICK_UP, OPENING -> Direction.NONE;
        };
    }

    private static Direction middle(boolean over, Lever lever) {
        return switch (lever) {
            case BRAKE_AT_TURN_IN, OVERLAP -> over ? Direction.LESS : Direction.MORE;
            case RELEASE_RATE -> over ? Direction.NONE : Direction.LESS;
            case ENTRY_SPEED -> Direction.LESS;
            case PICK_UP, OPENING -> Direction.NONE;
        };
    }

    private static Direction exit(boolean over, Lever lever, DrivenAxle driven) {
        return switch (lever) {
            case BRAKE_AT_TURN_IN, OVERLAP, RELEASE_RATE -> Direction.NONE;
            case ENTRY_SPEED -> Direction.LESS;
            case PICK_UP -> over ? byDrive(driven, Direction.MORE, Direction.LESS) : Direction.MORE;
            case OPENING -> over ? byDrive(driven, Direction.LESS, Direction.MORE) : Direction.LESS;
        };
    }

    private static Direction byDrive(DrivenAxle driven, Direction rear, Direction front) {
        return switch (driven) {
            case REAR -> rear;
            case FRONT -> front;
            case ALL -> Direction.EITHER;
        };
    }
}
