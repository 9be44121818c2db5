package setwright.core.handling;

/**
 * What the feet did in one pass that costs time or upsets the car, whatever the car.
 *
 * @param brakeHeldS     time on the brake while the lateral acceleration was already near its most, s
 * @param brakeHeld      mean brake in that time, 0..1
 * @param liftAfter      how far the throttle was closed again after the pick-up, 0..1
 * @param overlapS       time with brake and throttle both pressed, s
 * @param brakeAgain     largest second squeeze after the brake had been eased, 0..1
 * @param coastS         time with neither pedal between brake release and pick-up, s
 * @param limiterS       time on the engine's limiter, s
 * @param reversalsPerS  reversals of the steering wheel between turn-in and straight, 1/s
 * @param sawingRad      size from which on a reversal counts, at the steering wheel, rad
 * @param brakeInBend    braking when the lateral acceleration first comes to four fifths of its most, as a share of the
 *                       hardest braking of the pass, 0..1; a round friction circle leaves 0.6
 * @param brakePeak      greatest brake of the pass, 0..1
 * @param liftCornering  lateral acceleration, as a share of its most, where the throttle began to close again by
 *                       {@code liftAfter}; 0 without a lift
 * @param throttleAheadS time by which the throttle was ahead of what {@code liftAfter} left of it: from when it was first as far open
 *                       until then, s; NaN without a lift
 * @param pickUpEarlyS   time from the pick-up until the path is tightest, s; negative: the path opened before; NaN without
 *                       pick-up
 * @param trailShape     braking beside cornering, from turn-in to the most lateral acceleration: exponent p of {@code x^p + y^p = 1},
 *                       2 for a round friction circle; NaN without hard braking
 * @param driveShape     the same for throttle and cornering after the pick-up, of what the driven tyres have; NaN without
 */
public record Habits(
        double brakeHeldS,
        double brakeHeld,
        double liftAfter,
        double overlapS,
        double brakeAgain,
        double coastS,
        double limiterS,
        double reversalsPerS,
        double sawingRad,
        double brakeInBend,
        double brakePeak,
        double liftCornering,
        double throttleAheadS,
        double pickUpEarlyS,
        double trailShape,
        double driveShape) {}
