package setwright.core.replay;

import setwright.core.car.model.CarModel;

/** Force at full throttle less resistance over speed, of a car or of its change; kept in steps because replays ask often. */
final class DriveTable {
    private static final double STEP_MPS = 0.5;
    private static final int COUNT = 260;
    /** A logger and a limiter disagree by about this share. */
    private static final double LIMITER_SLACK = 1.02;

    private final double[] force;
    private final CarModel carBefore;
    private final CarModel carAfter;
    private final boolean same;

    private DriveTable(CarModel carBefore, CarModel carAfter) {
        this.carBefore = carBefore;
        this.carAfter = carAfter;
        this.same = carBefore.powertrain().actsLike(carAfter.powertrain());
        this.force = net(carAfter);
    }

    static DriveTable of(CarModel car) {
        return new DriveTable(car, car);
    }

    /** Returns the table of a change from the same car. */
    DriveTable changed(CarModel after) {
        return new DriveTable(carBefore, after);
    }

    private static double[] net(CarModel car) {
        double[] out = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double speed = STEP_MPS * i;
            out[i] = car.powertrain().driveN(speed / LIMITER_SLACK) - car.resistanceN(speed);
        }
        return out;
    }

    /** Returns the force of the changed car at a speed, N. */
    double forceN(double speed) {
        double place = Math.min(speed / STEP_MPS, COUNT - 1.001);
        int left = (int) place;
        return force[left] + (place - left) * (force[left + 1] - force[left]);
    }

    /** Tells whether the changed car may change gear elsewhere. */
    boolean otherGears() {
        return !same;
    }

    /**
     * Returns how many more changes up the changed car makes between two speeds than the car as driven; negative: fewer.
     */
    int extraShifts(double fromMps, double toMps) {
        return shifts(carAfter, fromMps, toMps) - shifts(carBefore, fromMps, toMps);
    }

    private static int shifts(CarModel car, double from, double to) {
        return car.powertrain().drivingGear(to) - car.powertrain().drivingGear(from);
    }
}
