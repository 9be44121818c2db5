package setwright.core.replay;

import setwright.core.car.model.CarModel;

/** Force at full throttle less resistance, before and after a change, over speed; kept in steps because replays ask often. */
final class DriveTable {
    private static final double STEP_MPS = 0.5;
    private static final int COUNT = 260;
    /** A logger and a limiter disagree by about this share. */
    private static final double LIMITER_SLACK = 1.02;

    private final double[] before;
    private final double[] after;
    private final CarModel carBefore;
    private final CarModel carAfter;
    private final boolean same;

    private DriveTable(CarModel carBefore, CarModel carAfter, double[] before, double[] after) {
        this.carBefore = carBefore;
        this.carAfter = carAfter;
        this.same = carBefore.powertrain().actsLike(carAfter.powertrain());
        this.before = before;
        this.after = after;
    }

    static DriveTable of(CarModel car) {
        double[] force = net(car);
        return new DriveTable(car, car, force, force);
    }

    static DriveTable of(CarModel before, CarModel after) {
        return new DriveTable(before, after, net(before), net(after));
    }

    private static double[] net(CarModel car) {
        double[] out = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double speed = STEP_MPS * i;
            out[i] = car.powertrain().driveN(speed / LIMITER_SLACK) - car.resistanceN(speed);
        }
        return out;
    }

    /** Returns the force that the changed car has more at its own speed, N. */
    double extraN(double speed, double relative) {
        return at(after, speed * Math.sqrt(1.0 + relative)) - at(before, speed);
    }

    /**
     * Returns how many more changes up the changed car makes between two speeds than the car as driven; negative: fewer.
     */
    int extraShifts(double fromMps, double toMps) {
        return same ? 0 : shifts(carAfter, fromMps, toMps) - shifts(carBefore, fromMps, toMps);
    }

    private static int shifts(CarModel car, double from, double to) {
        return car.powertrain().drivingGear(to) - car.powertrain().drivingGear(from);
    }

    private static double at(double[] table, double speed) {
        double place = Math.min(speed / STEP_MPS, COUNT - 1.001);
        int left = (int) place;
        return table[left] + (place - left) * (table[left + 1] - table[left]);
    }
}
