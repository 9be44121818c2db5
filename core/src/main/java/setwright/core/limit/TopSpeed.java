package setwright.core.limit;

import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;

/** The speed at which the engine can do no more than hold it. */
final class TopSpeed {
    private static final double LOWEST = 5.0;
    private static final double STRIDE = 0.25;
    private static final int BISECTIONS = 40;

    private TopSpeed() {}

    /** Returns it, m/s: the first met from below, the limiter of the last gear at most. */
    static double of(CarModel car) {
        Powertrain engine = car.powertrain();
        double limiter = engine.limitMps(engine.gears() - 1);
        double low = Math.min(LOWEST, limiter);
        while (low + STRIDE < limiter && spare(car, low + STRIDE) > 0.0) {
            low += STRIDE;
        }
        double high = Math.min(low + STRIDE, limiter);
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (spare(car, middle) > 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Returns the greatest power at the wheels up to a speed, W. */
    static double powerW(CarModel car, double topMps) {
        double most = 0.0;
        for (double speed = LOWEST; speed <= topMps; speed += STRIDE) {
            most = Math.max(most, car.powertrain().driveN(speed) * speed);
        }
        return most;
    }

    private static double spare(CarModel car, double speed) {
        return car.powertrain().driveN(speed) - car.resistanceN(speed);
    }
}
