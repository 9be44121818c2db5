package setwright.core.limit;

import java.util.Optional;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium.End;
import setwright.core.car.sums.Gravity;

/**
 * The envelope of a whole car on four wheels: limits solved with {@link setwright.core.car.model.Equilibrium} on a grid, smooth in
 * between. The engine's power is not on the grid: it is taken as it is at each speed, with its gears.
 *
 * <p>The car is taken as symmetric. Where braking a little would let it corner faster than at constant speed, that is not used; and a
 * dip of the limit between two accelerations is bridged.
 */
public final class Envelope implements GripEnvelope {
    private static final int POWER_ROUNDS = 2;
    private static final double LEAST_SPEED = 0.5;

    private final LimitGrid grid;
    private final LimitSurface surface;

    private Envelope(LimitGrid grid) {
        this.grid = grid;
        this.surface = new LimitSurface(grid);
    }

    /**
     * Solves the envelope of a car.
     *
     * @throws IllegalArgumentException when the car cannot corner at all
     */
    public static Envelope of(CarModel car) {
        return new Envelope(new LimitGrid(car, Optional.empty()));
    }

    /**
     * Solves the envelope of a car that differs little from another: in its setup. Twice as quick, and differences between
     * the two are those of the cars, not of the search.
     *
     * @throws IllegalArgumentException when the car cannot corner at all
     */
    public static Envelope of(CarModel car, Envelope near) {
        return new Envelope(new LimitGrid(car, Optional.of(near.grid)));
    }

    /** Returns the car. */
    public CarModel car() {
        return grid.car;
    }

    @Override
    public double massKg() {
        return grid.car.body().massKg();
    }

    @Override
    public double topSpeedMps() {
        return grid.topMps;
    }

    @Override
    public double corneringMps2(double speedMps) {
        return surface.corneringMps2(speedMps);
    }

    @Override
    public double brakingMps2(double speedMps, double lateralMps2) {
        return surface.brakingMps2(speedMps, lateralMps2);
    }

    @Override
    public double tractionMps2(double speedMps, double lateralMps2) {
        return surface.tractionMps2(speedMps, lateralMps2);
    }

    @Override
    public double powerMps2(double speedMps, double lateralMps2) {
        double speed = Math.max(speedMps, LEAST_SPEED);
        double straight = (grid.car.powertrain().driveN(speed) - grid.car.resistanceN(speed)) / massKg();
        double forward = straight;
        for (int i = 0; i < POWER_ROUNDS && lateralMps2 > 0.0; i++) {
            forward = straight - surface.scrubN(speed, forward, lateralMps2) / massKg();
        }
        return forward;
    }

    /**
     * Returns the greatest lateral acceleration at an acceleration along, m/s².
     *
     * @param forwardMps2  beyond the hardest braking or drive, taken as that
     */
    public double greatestLateralMps2(double speedMps, double forwardMps2) {
        return surface.lateralMps2(speedMps, forwardMps2);
    }

    /** Returns the hardest braking straight ahead, m/s², negative. */
    public double hardestBrakingMps2(double speedMps) {
        return surface.brakingMps2(speedMps, 0.0);
    }

    @Override
    public CarState at(double speedMps, double forwardMps2, double lateralMps2) {
        double speed = Math.max(speedMps, LEAST_SPEED);
        CarModel car = grid.car;
        double most = surface.lateralMps2(speed, forwardMps2);
        double share = Math.min(lateralMps2 / most, 1.0);
        double balance = surface.balanceRad(speed, forwardMps2, lateralMps2);
        double scrub = surface.scrubN(speed, forwardMps2, lateralMps2);
        double rolling = car.rollingShare() * massKg() * Gravity.STANDARD_MPS2;
        double drag = car.resistanceN(speed) - rolling;
        double along = massKg() * forwardMps2 + drag + rolling + scrub;
        double engine = along >= 0.0 ? along : -Math.min(-along, car.engineBrakingN(speed));
        Powertrain powertrain = car.powertrain();
        int gear = along >= 0.0 ? powertrain.drivingGear(speed) : powertrain.lowestGear(speed);
        return new CarState(
                balance,
                // the way round without slip, and what front slips more than the rear
                Math.atan(car.body().wheelbaseM() * lateralMps2 / (speed * speed)) + balance,
                share,
                surface.end(speed, forwardMps2) == End.FRONT ? LimitedBy.FRONT_AXLE : LimitedBy.REAR_AXLE,
                gear + 1,
                engine,
                Math.max(engine - along, 0.0),
                drag,
                rolling,
                scrub);
    }
}
