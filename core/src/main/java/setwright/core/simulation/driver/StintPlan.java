package setwright.core.simulation.driver;

import setwright.core.car.model.CarModel;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/**
 * What is to be driven.
 *
 * @param line       the line that the driver follows
 * @param bumps      of the road
 * @param car        with a full tank
 * @param gear       what turns and rolls
 * @param condition  of the tyres
 * @param tank       fuel
 * @param style      of the driver
 * @param flying     laps after the out lap, &gt;= 1
 * @param practice   laps that the driver has had in this car before, not recorded
 * @param seed       the same seed gives the same laps
 */
public record StintPlan(
        ReferenceLine line,
        RoadBumps bumps,
        CarModel car,
        RunningGear gear,
        TyreCondition condition,
        Tank tank,
        DriverStyle style,
        int flying,
        int practice,
        long seed) {

    public StintPlan {
        if (flying < 1 || practice < 0) {
            throw new IllegalArgumentException(
                    "a stint needs a flying lap and no negative practice, got " + flying + " and " + practice);
        }
    }

    /** Returns a plan with everything usual: eight flying laps after eight of practice on a flat road. */
    public static StintPlan usual(ReferenceLine line, CarModel car, DriverStyle style, long seed) {
        return new StintPlan(
                line,
                RoadBumps.NONE,
                car,
                RunningGear.usual(),
                TyreCondition.usual(),
                Tank.CONSTANT,
                style,
                8,
                8,
                seed);
    }
}
