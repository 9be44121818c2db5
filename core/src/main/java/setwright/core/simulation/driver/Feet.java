package setwright.core.simulation.driver;

import setwright.core.car.model.CarModel;
import setwright.core.simulation.vehicle.TransientCar;

/** Throttle and brake; mutable. One pedal at a time, with the time that a foot takes to change over. */
final class Feet {
    private static final double CHANGE_S = 0.06;
    private static final double SPEED_GAIN = 2.0;
    private static final double RELEASE_PER_S = 5.0;
    private static final double THROTTLE_PER_S = 7.0;
    private static final double PEDAL_LAG_S = 0.04;
    /** Share by which he brakes harder than planned when he is too fast. */
    private static final double LATE = 1.12;

    /** Share of the straight-line braking that is dared even when all grip is taken sideways: who is too fast must slow down. */
    private static final double LEAST_STOP = 0.18;

    /** Acceleration that is asked for even when all grip is taken sideways: it keeps the speed, m/s². */
    private static final double LEAST_DRIVE = 0.3;

    /** The plan must ask for this much braking before a foot goes over, m/s². */
    private static final double WORTH_BRAKING = 0.8;

    private final CarModel car;
    private final CarFeel feel;
    private final DriverStyle style;
    private final double greatestBrakeN;
    private double throttle;
    private double brake;
    private double changing;
    private boolean braking;

    Feet(CarModel car, CarFeel feel, DriverStyle style, double greatestBrakeN) {
        this.car = car;
        this.feel = feel;
        this.style = style;
        this.greatestBrakeN = greatestBrakeN;
    }

    /** Returns how far a driver must look ahead for his feet to be in time, s. */
    double leadS() {
        return PEDAL_LAG_S + 0.3 * style.brakeBuildS();
    }

    /**
     * Moves on.
     *
     * @param now        the car
     * @param wanted     speed meant, m/s
     * @param asked      acceleration meant, m/s²
     * @param lift       share of the throttle that is kept, 1 for all
     * @param release    share of the brake that is kept
     */
    void step(double stepS, TransientCar now, double wanted, double asked, double lift, double release) {
        double speed = now.speedMps();
        double mass = car.body().massKg();
        double demand = asked + SPEED_GAIN * (wanted - speed);
        // a driver who is late does not brake harder than he knows that the tyres can
        demand = Math.max(demand, LATE * Math.min(asked, -WORTH_BRAKING));
        // and what the car takes sideways at this moment he does not ask for again lengthwise
        double used = Math.min(1.0, Math.abs(now.lateralMps2()) / feel.lateralMps2(speed));
        double hardest = feel.brakingMps2(speed);
        double stops = style.brakeShare() * hardest * SpeedPlan.left(used, style.trail());
        demand = Math.max(demand, -LATE * Math.max(stops, LEAST_STOP * hardest));
        double goes = feel.tractionMps2(speed) * SpeedPlan.left(used, style.power());
        demand = Math.min(demand, LATE * Math.max(goes, LEAST_DRIVE));
        double coasting = -feel.coastingMps2(speed);
        boolean wantsBrake = demand < coasting - (braking ? 0.0 : WORTH_BRAKING);
        if (wantsBrake != braking) {
            braking = wantsBrake;
            changing = CHANGE_S;
        }
        changing = Math.max(0.0, changing - stepS);
        double brakeAim = 0.0;
        double throttleAim = 0.0;
        if (changing == 0.0 && braking) {
            brakeAim = Math.min(1.0, Math.max(0.0, mass * (coasting - demand) / greatestBrakeN)) * release;
        } else if (changing == 0.0) {
            double full = (car.powertrain().driveN(speed) - car.resistanceN(speed)) / mass;
            throttleAim = Math.max(0.0, Math.min(1.0, (demand - coasting) / Math.max(full - coasting, 0.5)));
            throttleAim *= lift;
        }
        brake = follow(brake, brakeAim, stepS, 0.55 / style.brakeBuildS(), RELEASE_PER_S);
        throttle = follow(throttle, throttleAim, stepS, THROTTLE_PER_S, 2.0 * THROTTLE_PER_S);
    }

    private static double follow(double now, double aim, double stepS, double up, double down) {
        double change = (aim - now) * -Math.expm1(-stepS / PEDAL_LAG_S);
        double next = now + Math.max(-down * stepS, Math.min(change, up * stepS));
        return next < 0.002 ? 0.0 : next;
    }

    double throttle() {
        return throttle;
    }

    double brake() {
        return brake;
    }
}
