package setwright.core.chassis;

import java.util.List;

/**
 * Steering torque against what the front axle gives. The force acts behind the middle of the contact patch by the pneumatic trail, which
 * falls to nothing as the tyre comes to its peak: the wheel goes light before the force does.
 *
 * @param points  by use of the front axle, ascending
 * @param kept    torque per force near the peak over that at light use; 1 where nothing is lost
 * @param laps    judged
 */
public record SteeringTorque(List<Point> points, LapInterval kept, List<Integer> laps) {
    /** A trail that has lost a quarter is clear of what weight transfer and caster do (our choice). */
    private static final double LIGHT = 0.75;

    public SteeringTorque {
        points = List.copyOf(points);
        laps = List.copyOf(laps);
    }

    /**
     * Torque per lateral acceleration, over that of light use.
     *
     * @param lowUse   least slip over slip at the peak
     * @param highUse  most
     * @param ratio    1 at light use
     */
    public record Point(double lowUse, double highUse, LapInterval ratio) {}

    /** Tells whether the wheel goes light near the peak, beyond chance: the front is where its slip says. */
    public boolean goesLight() {
        return kept.below(LIGHT);
    }
}
