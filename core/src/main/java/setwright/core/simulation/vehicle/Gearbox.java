package setwright.core.simulation.vehicle;

import setwright.core.car.drive.Powertrain;

/** The gear that is in, and the short time without drive while it changes; mutable. */
final class Gearbox {
    /** A change down is made when it leaves the engine this share below its limit. */
    private static final double DOWN = 0.93;

    private static final double AGAIN_S = 0.25;

    private final Powertrain powertrain;
    private final double shiftS;
    private int gear;
    private double openS;
    private double waitS;

    Gearbox(Powertrain powertrain, double shiftS, double speedMps) {
        this.powertrain = powertrain;
        this.shiftS = shiftS;
        this.gear = powertrain.drivingGear(speedMps);
    }

    /** Goes on by a step; a driver on the throttle changes up, one on the brake changes down. */
    void step(double stepS, double roadSpeedMps, boolean driving) {
        openS = Math.max(0.0, openS - stepS);
        waitS = Math.max(0.0, waitS - stepS);
        if (waitS > 0.0) {
            return;
        }
        if (driving && gear < powertrain.drivingGear(roadSpeedMps)) {
            change(gear + 1);
        } else if (!driving
                && gear > 0
                && powertrain.engineRadPerS(gear - 1, roadSpeedMps)
                        < DOWN * powertrain.engineRadPerS(gear, powertrain.limitMps(gear))) {
            change(gear - 1);
        }
    }

    private void change(int to) {
        gear = to;
        openS = shiftS;
        waitS = AGAIN_S;
    }

    /** Returns the gear, counted from 0. */
    int gear() {
        return gear;
    }

    /** Tells whether engine and wheels are parted. */
    boolean open() {
        return openS > 0.0;
    }
}
