package setwright.core.replay;

import java.util.Arrays;
import java.util.List;
import setwright.core.car.Sheets;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.drive.Brakes;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Moment;

/** Invented laps, moment by moment, and cars that differ in one thing. */
final class Moments {
    static final double STEP_S = 0.04;

    private Moments() {}

    static CarModel car() {
        return new CarAssembler(Sheets.adjustable())
                .build(CarPrior.of(Sheets.adjustable()).middle());
    }

    /** One moment in a left turn of the radius; infinite for a straight. */
    static Moment moment(double speed, double forward, double radius, double throttle, double brake) {
        double lateral = speed * speed / radius;
        return new Moment(speed, forward, lateral, speed / radius, 0.0, 2.5 / radius, throttle, brake);
    }

    static DrivenLap lap(List<Moment> moments) {
        int count = moments.size();
        double[] station = new double[count];
        for (int k = 1; k < count; k++) {
            station[k] = station[k - 1] + moments.get(k - 1).speed() * STEP_S;
        }
        double[] balance = new double[count];
        Arrays.fill(balance, Double.NaN);
        return new DrivenLap(1, STEP_S, moments, station, new int[count], new int[count], balance);
    }

    static DrivenLap speeds(double... speeds) {
        return lap(Arrays.stream(speeds)
                .mapToObj(speed -> moment(speed, 0.0, Double.POSITIVE_INFINITY, 1.0, 0.0))
                .toList());
    }

    static CarModel withDrag(CarModel car, double dragM2) {
        AeroMap air = car.aero();
        AeroMap other = new AeroMap(
                air.liftFrontM2(),
                air.liftRearM2(),
                dragM2,
                air.heightFrontM(),
                air.heightRearM(),
                air.groundFront(),
                air.groundRear(),
                air.rakeShift(),
                air.airDensity());
        return with(car, other, car.powertrain(), car.brakes());
    }

    static CarModel withBrakes(CarModel car, double frontShare) {
        return with(car, car.aero(), car.powertrain(), new Brakes(frontShare));
    }

    static CarModel withPowertrain(CarModel car, Powertrain train) {
        return with(car, car.aero(), train, car.brakes());
    }

    private static CarModel with(CarModel car, AeroMap air, Powertrain train, Brakes brakes) {
        return new CarModel(
                car.body(),
                air,
                car.raisedFrontM(),
                car.raisedRearM(),
                train,
                car.differential(),
                brakes,
                car.drivenAxle(),
                car.driveFront(),
                car.engineBrakingNm(),
                car.front(),
                car.rear(),
                car.toeFrontRad(),
                car.toeRearRad(),
                car.yawInertiaKgM2(),
                car.rollingShare());
    }
}
