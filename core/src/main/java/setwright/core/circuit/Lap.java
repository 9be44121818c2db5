package setwright.core.circuit;

/**
 * One lap of a recording.
 *
 * @param number  the number people know it by: the logger's own when there is one, else counted from 0 for the out lap
 * @param from    first sample, inclusive
 * @param to      last sample, exclusive
 * @param timeS   lap time, s, from interpolated line crossings; for a partial lap the time that was recorded
 * @param kind    whether it can be judged
 * @param why     for a lap put aside, the reason with its figures; empty for a good lap
 */
public record Lap(int number, int from, int to, double timeS, LapKind kind, String why) {
    public Lap {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException("lap " + number + " must hold samples, got [" + from + ", " + to + ")");
        }
    }

    /** Tells whether the lap is judged. */
    public boolean good() {
        return kind == LapKind.GOOD;
    }

    /** Returns this lap put aside (or taken back) for the given reason. */
    public Lap as(LapKind newKind, String newWhy) {
        return new Lap(number, from, to, timeS, newKind, newWhy);
    }
}
