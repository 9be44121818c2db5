package setwright.core.advice;

import java.util.List;
import setwright.core.numerics.SlopeInterval;

/**
 * Tyres that run unlike each other, by one temperature each.
 *
 * @param frontLeftK   mean of the last half of the judged laps, K; and so on
 * @param frontOverRear  front axle less rear, K
 * @param leftOverRight  left side less right, K
 * @param drift        of the mean of all tyres, K a lap
 * @param laps         judged
 */
public record TemperatureAdvice(
        double frontLeftK,
        double frontRightK,
        double rearLeftK,
        double rearRightK,
        double frontOverRear,
        double leftOverRight,
        SlopeInterval drift,
        List<Integer> laps)
        implements Advice {
    public TemperatureAdvice {
        laps = List.copyOf(laps);
    }

    @Override
    public Topic topic() {
        return Topic.TYRE_TEMPERATURE;
    }
}
