package setwright.core.simulation.driver;

/**
 * How somebody drives.
 *
 * @param effort         share of the limiting axle's greatest force that he aims for, about 0.85 to 0.99
 * @param trail          how much of the tyre he asks for braking and cornering at once: exponent of the ellipse, 1 brakes
 *                       before the bend, 2 uses all of a round friction circle, more is too much
 * @param brakeShare     share of the straight-line braking that he uses
 * @param brakeBuildS    time in which the brake comes to full force, s
 * @param power          exponent as {@code trail}, for throttle and cornering
 * @param pickUpEarlyM   distance by which the throttle is picked up before the car is ready, m; negative waits
 * @param previewS       how far he looks ahead, s
 * @param delayS         from what happens to what he does about it, s
 * @param handsRadPerS   natural frequency of arms and steering wheel, rad/s
 * @param rearSlides     what he does when the rear slides
 * @param frontSlides    what he does when the front slides
 * @param scatter        how he differs from himself
 */
public record DriverStyle(
        double effort,
        double trail,
        double brakeShare,
        double brakeBuildS,
        double power,
        double pickUpEarlyM,
        double previewS,
        double delayS,
        double handsRadPerS,
        Reaction rearSlides,
        Reaction frontSlides,
        DriverScatter scatter) {

    /** Returns a good, steady driver. Delay and arms: human operator models of 0.1 to 0.2 s and 2 to 4 Hz (value from memory). */
    public static DriverStyle good() {
        return new DriverStyle(
                0.955,
                1.6,
                0.95,
                0.15,
                1.6,
                0.0,
                0.9,
                0.11,
                26.0,
                Reaction.CORRECT,
                Reaction.NONE,
                DriverScatter.steady());
    }

    /** Returns the same driver with another scatter. */
    public DriverStyle withScatter(DriverScatter other) {
        return with(effort, trail, power, pickUpEarlyM, rearSlides, frontSlides, other);
    }

    /** Returns the same driver who meets slides otherwise. */
    public DriverStyle withReactions(Reaction rear, Reaction front) {
        return with(effort, trail, power, pickUpEarlyM, rear, front, scatter);
    }

    /** Returns the same driver with other feet. */
    public DriverStyle withFeet(double otherTrail, double otherPower, double otherPickUpEarlyM) {
        return with(effort, otherTrail, otherPower, otherPickUpEarlyM, rearSlides, frontSlides, scatter);
    }

    /** Returns the same driver who asks for more or less of the tyres. */
    public DriverStyle withEffort(double other) {
        return with(other, trail, power, pickUpEarlyM, rearSlides, frontSlides, scatter);
    }

    private DriverStyle with(
            double newEffort,
            double newTrail,
            double newPower,
            double newPickUpEarlyM,
            Reaction rear,
            Reaction front,
            DriverScatter newScatter) {
        return new DriverStyle(
                newEffort,
                newTrail,
                brakeShare,
                brakeBuildS,
                newPower,
                newPickUpEarlyM,
                previewS,
                delayS,
                handsRadPerS,
                rear,
                front,
                newScatter);
    }
}
