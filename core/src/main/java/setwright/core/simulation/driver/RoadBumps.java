package setwright.core.simulation.driver;

import setwright.core.car.body.Axle;
import setwright.core.car.model.CarModel;

/** The force of an uneven road on a car's axles. */
public interface RoadBumps {
    /** A flat road. */
    RoadBumps NONE = station -> 0.0;

    /** Returns the height of the road under both wheels of an axle at a station, m. */
    double heightM(double stationM);

    /** Returns the force on both wheels of an axle beyond that of a flat road, N. */
    default double forceN(CarModel car, boolean isFront, double stationM, double speedMps) {
        if (this == NONE) {
            return 0.0;
        }
        Axle axle = isFront ? car.body().front() : car.body().rear();
        double at = stationM + (isFront ? car.body().toFrontM() : -car.body().toRearM());
        double height = heightM(at);
        double rise = (heightM(at + 0.1) - height) / 0.1 * speedMps;
        return 2.0
                * (axle.rideRate() * height + axle.damperShare() * axle.damper().force(rise));
    }
}
