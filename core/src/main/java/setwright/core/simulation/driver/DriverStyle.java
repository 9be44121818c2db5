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

    public DriverStyle withScatter(DriverScatter other) {
        return new DriverStyle(
                effort,
                trail,
                brakeShare,
                brakeBuildS,
                power,
                pickUpEarlyM,
                previewS,
                delayS,
                handsRadPerS,
                rearSlides,
                frontSlides,
                other);
    }

    public DriverStyle withReactions(Reaction rear, Reaction front) {
        return new DriverStyle(
                effort,
                trail,
                brakeShare,
                brakeBuildS,
                power,
                pickUpEarlyM,
                previewS,
                delayS,
                handsRadPerS,
                rear,
                front,
                scatter);
    }

    /** Returns the same driver with other feet. */
    public DriverStyle withFeet(double otherTrail, double otherPower, double otherPickUpEarlyM) {
        return new DriverStyle(
                effort,
                otherTrail,
                brakeShare,
                brakeBuildS,
                otherPower,
                otherPickUpEarlyM,
                previewS,
                delayS,
                handsRadPerS,
                rearSlides,
                frontSlides,
                scatter);
    }

    public DriverStyle withEffort(double other) {
        return new DriverStyle(
                other,
                trail,
                brakeShare,
                brakeBuildS,
                power,
                pickUpEarlyM,
                previewS,
                delayS,
                handsRadPerS,
                rearSlides,
                frontSlides,
                scatter);
    }
}
