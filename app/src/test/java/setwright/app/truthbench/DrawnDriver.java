package setwright.app.truthbench;

import java.util.Random;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.Reaction;
import setwright.core.simulation.fault.DriverFault;

/** Draws drivers: good ones that differ, and faults of technique. Ranges are our choice. */
final class DrawnDriver {
    private static final Reaction[] REAR = {Reaction.CORRECT, Reaction.CORRECT, Reaction.HOLD, Reaction.LIFT};
    private static final Reaction[] FRONT = {Reaction.NONE, Reaction.NONE, Reaction.WIND_ON, Reaction.LIFT};

    private DrawnDriver() {}

    static DriverStyle good(Random random) {
        return new DriverStyle(
                between(random, 0.935, 0.965),
                between(random, 1.4, 1.75),
                between(random, 0.9, 0.97),
                between(random, 0.1, 0.22),
                between(random, 1.4, 1.75),
                between(random, -3.0, 1.5),
                between(random, 0.8, 1.0),
                between(random, 0.11, 0.16),
                between(random, 18.0, 26.0),
                REAR[random.nextInt(REAR.length)],
                FRONT[random.nextInt(FRONT.length)],
                DriverScatter.steady().times(between(random, 0.6, 1.3)));
    }

    /** Returns the same driver with a fault. */
    static DriverStyle with(DriverFault fault, DriverStyle style, Random random) {
        return switch (fault) {
            case TOO_MUCH_TRAIL_BRAKING ->
                style.withFeet(between(random, 2.3, 3.2), style.power(), style.pickUpEarlyM());
            case THROTTLE_TOO_EARLY ->
                style.withFeet(style.trail(), between(random, 2.2, 3.0), between(random, 6.0, 14.0));
            case INCONSISTENT -> style.withScatter(DriverScatter.steady().times(between(random, 5.0, 9.0)));
        };
    }

    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
