package setwright.core.advice;

import java.util.List;
import java.util.Optional;

/**
 * One axle locks before the other.
 *
 * @param front    the front; else the rear
 * @param locks    times that it locked, alone wheels in bends left out
 * @param others   times that the other axle did
 * @param seconds  longest, s
 * @param pValue   that one axle has so many of them when both are as likely, two-sided
 * @param laps     that show it
 * @param corners  that show it
 * @param move     one step of the brake balance
 */
public record BrakeAdvice(
        boolean front,
        int locks,
        int others,
        double seconds,
        double pValue,
        List<Integer> laps,
        List<Integer> corners,
        Optional<Move> move)
        implements Advice {
    public BrakeAdvice {
        laps = List.copyOf(laps);
        corners = List.copyOf(corners);
    }

    @Override
    public Topic topic() {
        return Topic.BRAKE_BALANCE;
    }
}
