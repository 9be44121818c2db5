package setwright.core.simulation.vehicle;

import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarModel;

/** Engine, gears and brakes on the wheels; mutable. */
final class Drivetrain {
    /** Below this share of a gear's highest speed the clutch slips rather than stall the engine. */
    private static final double CLUTCH_SHARE = 0.3;

    private static final double BRAKING = 0.02;
    private static final double DRIVING = 0.05;

    private final RunningGear gear;
    private final double greatestBrakeN;
    private final Gearbox gearbox;

    /**
     * Starts in the gear for a speed.
     *
     * @param greatestBrakeN  sum of the brake forces that the pedal asks for at its end, N
     */
    Drivetrain(Powertrain powertrain, RunningGear gear, double speedMps, double greatestBrakeN) {
        this.gear = gear;
        this.greatestBrakeN = greatestBrakeN;
        this.gearbox = new Gearbox(powertrain, gear.shiftS(), speedMps);
    }

    double greatestBrakeN() {
        return greatestBrakeN;
    }

    /** Changes gear where it is time to, and turns the wheels on by a step. */
    void turn(double stepS, CarModel car, Wheels wheels, Inputs now) {
        double road = roadSpeedMps(car, wheels);
        gearbox.step(stepS, road, now.brake() <= BRAKING && now.throttle() > DRIVING);
        double radius = car.powertrain().tyreRadiusM();
        double drive = driveNm(car, road, now.throttle());
        double lever = car.powertrain().leverage(gearbox.gear()) * radius;
        double inertia = gearbox.open() ? 0.0 : gear.engineInertiaKgM2() * lever * lever;
        double brake = now.brake() * greatestBrakeN * radius;
        double frontBrake = 0.5 * brake * car.brakes().frontShare();
        double rearBrake = 0.5 * brake * (1.0 - car.brakes().frontShare());
        double share = car.driveFront();
        wheels.turn(0, share * drive, share * share * inertia, frontBrake, stepS);
        wheels.turn(2, (1.0 - share) * drive, (1.0 - share) * (1.0 - share) * inertia, rearBrake, stepS);
    }

    /** Torque on the driven wheels, N m. */
    private double driveNm(CarModel car, double roadSpeedMps, double throttle) {
        if (gearbox.open()) {
            return 0.0;
        }
        int in = gearbox.gear();
        Powertrain powertrain = car.powertrain();
        double slipping = CLUTCH_SHARE * powertrain.limitMps(in);
        double engine = powertrain.engineRadPerS(in, Math.max(roadSpeedMps, slipping));
        double full = powertrain.torqueNm(engine) * powertrain.efficiency();
        double overrun = roadSpeedMps > slipping ? car.engineBrakingNm() : 0.0;
        return (throttle * full - (1.0 - throttle) * overrun) * powertrain.leverage(in) * powertrain.tyreRadiusM();
    }

    /** Returns the gear, counted from 1. */
    int gear() {
        return gearbox.gear() + 1;
    }

    /** Returns the engine's speed, rad/s. */
    double engineRadPerS(CarModel car, Wheels wheels) {
        return car.powertrain().engineRadPerS(gearbox.gear(), roadSpeedMps(car, wheels));
    }

    /** Speed of the tread at which the driven wheels turn on the whole, m/s. */
    private static double roadSpeedMps(CarModel car, Wheels wheels) {
        double share = car.driveFront();
        double turning = 0.5
                * (share * (wheels.turning[0] + wheels.turning[1])
                        + (1.0 - share) * (wheels.turning[2] + wheels.turning[3]));
        return turning * car.powertrain().tyreRadiusM();
    }
}
