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
        double sawingRad) {}
