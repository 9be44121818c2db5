package setwright.core.handling;

import java.util.OptionalDouble;

/**
 * Where the driver did what, m along the reference line (unwrapped: grows through the corner); empty when it did not
 * happen.
 *
 * @param brakeOn         brake applied
 * @param brakePeak       hardest braking
 * @param turnIn          steering begins to leave straight ahead
 * @param brakeOff        brake released
 * @param highestSteer    most lock
 * @param lowestSpeed     slowest point
 * @param throttlePickUp  throttle applied after the slowest part
 * @param fullThrottle    throttle fully open
 * @param steerStraight   wheel straight again
 */
public record CornerEvents(
        OptionalDouble brakeOn,
        OptionalDouble brakePeak,
        OptionalDouble turnIn,
        OptionalDouble brakeOff,
        OptionalDouble highestSteer,
        OptionalDouble lowestSpeed,
        OptionalDouble throttlePickUp,
        OptionalDouble fullThrottle,
        OptionalDouble steerStraight) {}
