package setwright.core.circuit;

/**
 * One corner of a circuit, in stations along the reference line.
 *
 * @param number     counted from 1 after the start line
 * @param direction  which way it turns
 * @param startM     where the approach begins: far enough before turn-in to hold the braking, m; negative when the
 *                   approach begins before the start line
 * @param turnInM    where the line begins to turn, m
 * @param apexM      the middle of the tight part, m; always in [0, length)
 * @param turnOutM   where the line has become straight again, m
 * @param endM       where the exit ends: before the next corner's approach, m; may exceed the circuit's length when the
 *                   corner spans the start line
 */
public record Corner(
        int number, Direction direction, double startM, double turnInM, double apexM, double turnOutM, double endM) {

    /** Which way a corner turns. */
    public enum Direction {
        LEFT,
        RIGHT
    }

    public Corner {
        if (!(startM <= turnInM && turnInM <= apexM && apexM <= turnOutM && turnOutM <= endM)) {
            throw new IllegalArgumentException("stations of corner " + number + " must be in driving order, got "
                    + startM + ", " + turnInM + ", " + apexM + ", " + turnOutM + ", " + endM);
        }
    }

    /** Returns +1 for a left corner, -1 for a right one: multiplies ISO 8855 quantities so that turning in is positive. */
    public double sign() {
        return direction == Direction.LEFT ? 1.0 : -1.0;
    }
}
