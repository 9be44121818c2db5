package setwright.core.car.model;

import static setwright.core.car.model.Parameter.*;

import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;

/*
 * Design note. Every parameter has a middle and a spread. The spreads say what is known without the laps: published tyre sets
 * (Bakker, Nyborg, Pacejka, SAE 870421, 1987: load sensitivity 0.10 at 4 kN; Perantoni and Limebeer, Vehicle System Dynamics
 * 52(5), 2014: 0.22, peaks at 8 to 9 degrees and 0.10 to 0.11 of slip, values from memory), handbook ranges (dampers: ratio
 * 0.5 to 0.7; roll centres: within 30 mm of what is usual for the kind of car) and, where no publication helps
 * (pressure, camber, wings), common practice with a spread as wide as it differs. What the sheet gives has the spread of
 * a workshop measurement.
 */

/** What is known of a car's parameters before its laps are looked at. */
public final class CarPrior {
    private final double[] middle = new double[Parameter.count()];
    private final double[] spread = new double[Parameter.count()];

    private CarPrior() {}

    /** Returns the prior for a sheet. */
    public static CarPrior of(CarSheet sheet) {
        CarPrior prior = new CarPrior();
        prior.set(GRIP, 0.0, 0.25);
        prior.set(GRIP_SPLIT, 0.0, 0.04);
        prior.set(GRIP_ALONG, 0.05, 0.07);
        prior.set(LOAD_SENSITIVITY, 0.15, 0.05);
        prior.set(PEAK_SLIP, 0.0, 0.2);
        prior.set(PEAK_SLIP_SPLIT, 0.0, 0.15);
        prior.set(PEAK_SLIP_LOAD, 0.15, 0.15);
        prior.set(PEAK_SLIP_RATIO, 0.0, 0.2);
        prior.set(CAMBER_BEST_FRONT, 0.0, Math.toRadians(0.6));
        prior.set(CAMBER_BEST_REAR, 0.0, Math.toRadians(0.6));
        prior.set(CAMBER_LOSS, 0.0, 0.5);
        prior.set(PRESSURE_BEST_FRONT, 0.0, 0.03);
        prior.set(PRESSURE_BEST_REAR, 0.0, 0.03);
        prior.set(PRESSURE_LOSS, 0.0, 0.5);
        prior.set(PRESSURE_STIFFNESS, 0.5, 0.2);
        prior.set(ROLL_CENTRE_FRONT, 0.0, 0.03);
        prior.set(ROLL_CENTRE_REAR, 0.0, 0.03);
        prior.set(ANTI_FRONT, 0.2, 0.1);
        prior.set(ANTI_REAR, 0.25, 0.1);
        prior.set(ROLL_SPLIT, 0.0, 0.1);
        prior.set(DAMPING, 0.0, 0.25);
        prior.set(DAMPER_RANGE, 0.0, 0.4);
        prior.set(LIFT, 0.0, 0.35);
        prior.set(LIFT_BALANCE, 0.0, 0.04);
        prior.set(DRAG, 0.0, 0.2);
        prior.set(WING_EFFECT, 0.0, 0.4);
        prior.set(WING_DRAG, 0.0, 0.4);
        prior.set(GROUND_EFFECT, 0.0, 0.4);
        prior.set(RAKE_EFFECT, 0.1, 0.07);
        prior.set(POWER, 0.0, 0.35);
        prior.set(TORQUE_PEAK, 0.0, 0.05);
        prior.set(SHIFT, 0.0, 0.015);
        prior.set(ENGINE_BRAKING, 0.0, 0.3);
        prior.set(LOCKING, 0.0, 0.25);
        prior.set(YAW_INERTIA, 0.0, 0.1);
        prior.set(HEIGHT, 0.0, 0.05);
        prior.set(BRAKE_SHARE, 0.0, 0.015);
        prior.given(sheet.detail());
        return prior;
    }

    private void given(CarDetail detail) {
        narrow(GRIP, detail.tyre().grip().isPresent(), 0.1);
        narrow(PEAK_SLIP, detail.tyre().peakSlipAngleRad().isPresent(), 0.1);
        narrow(LIFT, detail.air().downforceFrontM2().isPresent(), 0.1);
        narrow(LIFT_BALANCE, detail.air().downforceFrontM2().isPresent(), 0.02);
        narrow(DRAG, detail.air().dragAreaM2().isPresent(), 0.08);
        narrow(
                POWER,
                detail.engine().powerW().isPresent()
                        || !detail.engine().torque().isEmpty(),
                0.05);
        narrow(ENGINE_BRAKING, detail.engine().brakingTorqueNm().isPresent(), 0.1);
        narrow(ROLL_CENTRE_FRONT, detail.front().rollCentreHeightM().isPresent(), 0.01);
        narrow(ROLL_CENTRE_REAR, detail.rear().rollCentreHeightM().isPresent(), 0.01);
        narrow(ANTI_FRONT, detail.body().antiDiveShare().isPresent(), 0.05);
        narrow(ANTI_REAR, detail.body().antiSquatShare().isPresent(), 0.05);
        narrow(YAW_INERTIA, detail.body().yawInertiaKgM2().isPresent(), 0.03);
        narrow(
                DAMPING,
                detail.front().damper().isPresent() && detail.rear().damper().isPresent(),
                0.1);
    }

    private void set(Parameter parameter, double value, double deviation) {
        middle[parameter.index()] = value;
        spread[parameter.index()] = deviation;
    }

    private void narrow(Parameter parameter, boolean given, double deviation) {
        if (given) {
            spread[parameter.index()] = deviation;
        }
    }

    /** Returns the middle values, by index of {@link Parameter}. */
    public double[] middle() {
        return middle.clone();
    }

    /** Returns the standard deviations, by index of {@link Parameter}. */
    public double[] spread() {
        return spread.clone();
    }

    /** Returns the middle of a parameter. */
    public double middle(Parameter parameter) {
        return middle[parameter.index()];
    }

    /** Returns the standard deviation of a parameter. */
    public double spread(Parameter parameter) {
        return spread[parameter.index()];
    }
}
