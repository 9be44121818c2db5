package setwright.core.chassis;

import java.util.OptionalDouble;

/**
 * Temperatures of the day, medians of laps; empty where not recorded.
 *
 * @param trackFromK   of the track in the first judged lap, K
 * @param trackToK     in the last
 * @param airFromK     of the air in the first judged lap, K
 * @param airToK       in the last
 */
public record DayTemperatures(
        OptionalDouble trackFromK, OptionalDouble trackToK, OptionalDouble airFromK, OptionalDouble airToK) {}
