package setwright.core.replay;

import setwright.core.car.model.CarModel;
import setwright.core.car.model.Moment;

/*
 * Design note. Speed squared, w, obeys dw/ds = 2 ax along the line, so that a small change obeys a linear equation that can be
 * followed from where the driver cannot choose (the slowest point of a corner) to where he can (the fastest point before
 * the next brake): forward on the way out, backward on the way in. Three laws cover a lap:
 *
 *   - on the tyres (brake, corner, part throttle): the whole acceleration (ax, ay) may grow by the scale of the margin. More
 *     speed on the same line asks for more ay, which leaves less for ax: A (dU) = ax dax + ay day. At the slowest point,
 *     where ax vanishes, this says that w grows by the scale, as it must;
 *   - on the engine (full throttle): the force changes with gearing and drag, and falls as speed grows;
 *   - coasting on a straight: nothing changes but drag.
 *
 * The lap is closed: what is carried over the line at its end is what it begins with.
 */

/** Turns margins into time along one lap. */
final class TimeGain {
    private static final double FULL = 0.95;
    private static final double LEAST_ALONG = 0.3;
    private static final double MOST_RELATIVE = 0.3;
    /** Time without drive while changing up, between a sequential box and a lever (common practice: 0.05 to 0.3 s). */
    private static final double SHIFT_S = 0.12;

    private static final double LEAST_DILUTION = 0.5;
    private static final int ROUNDS = 2;

    private final DrivenLap lap;
    private final CarModel before;
    private final DriveTable same;
    private final boolean[] rising;
    private final boolean[] full;
    private final double[] speed;
    /** On the tyres: what the margin adds, and what is left of it all after more speed has asked for its share. */
    private final double[] tyreGain;

    private final double[] tyreKeep;
    /** On the engine: what force adds, the force as driven, N, and what is left on the way out and on the way back. */
    private final double[] engineGain;

    private final double[] drivenN;
    private final double[] engineKeepOut;
    private final double[] engineKeepBack;
    private final double[] relative;

    TimeGain(DrivenLap lap, CarModel before) {
        int count = lap.size();
        this.lap = lap;
        this.before = before;
        this.same = DriveTable.of(before);
        this.rising = SpeedTrend.rising(lap);
        this.full = new boolean[count];
        this.speed = new double[count];
        this.tyreGain = new double[count];
        this.tyreKeep = new double[count];
        this.engineGain = new double[count];
        this.drivenN = new double[count];
        this.engineKeepOut = new double[count];
        this.engineKeepBack = new double[count];
        this.relative = new double[count];
        for (int k = 0; k < count; k++) {
            lay(k, lap.moments().get(k));
        }
    }

    /** Keeps of a moment what does not depend on the change. */
    private void lay(int k, Moment moment) {
        full[k] = moment.throttle() >= FULL;
        speed[k] = moment.speed();
        double w = moment.speed() * moment.speed();
        double twice = 2.0 * moment.speed() * lap.stepS() / w;
        // the same form on the way in and on the way out: away from the slowest point, w grows with the margin of |ax|
        double along = Math.abs(moment.forward()
                + before.resistanceN(moment.speed()) / before.body().massKg());
        double used = Math.max(along, LEAST_ALONG);
        double lateral = moment.lateral() * moment.lateral();
        tyreGain[k] = twice * (along * along + lateral) / used;
        // w itself changes along the way: relative change is diluted as w grows and condensed as it falls
        tyreKeep[k] = 1.0 / (1.0 + twice * lateral / used + twice * Math.abs(moment.forward()));
        engineGain[k] = twice / before.body().massKg();
        drivenN[k] = same.forceN(moment.speed());
        engineKeepOut[k] = 1.0 / Math.max(1.0 + twice * moment.forward(), LEAST_DILUTION);
        engineKeepBack[k] = 1.0 / Math.max(1.0 - twice * moment.forward(), LEAST_DILUTION);
    }

    /**
     * Follows a change around the lap.
     *
     * @param scale     logarithm of the scale of all accelerations at each moment
     * @param after     the changed car
     * @return relative change of the squared speed at each moment; overwritten by the next call
     */
    double[] faster(double[] scale, CarModel after) {
        int count = lap.size();
        DriveTable table = differs(after) ? same.changed(after) : same;
        double carried = 0.0;
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 0; k < count; k++) {
                if (rising[k]) {
                    carried = full[k] ? onEngine(k, carried, table) : onTyres(k, carried, scale[k]);
                    relative[k] = carried;
                } else {
                    carried = scale[k]; // the slowest point ahead is set by its own grip, see below
                }
            }
            double back = relative[0];
            for (int k = count - 1; k >= 0; k--) {
                if (rising[k]) {
                    back = relative[k];
                } else {
                    back = full[k] ? backOnEngine(k, back, table) : onTyres(k, back, scale[k]);
                    relative[k] = back;
                }
            }
            carried = relative[count - 1];
        }
        return relative;
    }

    /** Returns the change of time of each moment's stretch, s, at the speeds found last; negative: quicker. */
    double[] time() {
        double[] time = new double[lap.size()];
        for (int k = 0; k < time.length; k++) {
            time[k] = lap.stepS() * (1.0 / Math.sqrt(1.0 + relative[k]) - 1.0);
        }
        return time;
    }

    private double onEngine(int k, double carried, DriveTable table) {
        double extra = extraN(k, carried, table);
        if (table.otherGears()) {
            double forward = lap.moments().get(k).forward();
            if (forward > 0.0) {
                // while the gears change nothing drives: an impulse that the driven lap holds already for its own
                // changes
                extra -= table.extraShifts(speed[k], speed[k] + forward * lap.stepS())
                        * before.body().massKg()
                        * forward
                        * SHIFT_S
                        / lap.stepS();
            }
        }
        return bounded((carried + engineGain[k] * extra) * engineKeepOut[k]);
    }

    private double backOnEngine(int k, double back, DriveTable table) {
        return bounded((back - engineGain[k] * extraN(k, back, table)) * engineKeepBack[k]);
    }

    /** Force that the changed car has more at its own speed, N. */
    private double extraN(int k, double faster, DriveTable table) {
        return table.forceN(speed[k] * Math.sqrt(1.0 + faster)) - drivenN[k];
    }

    private double onTyres(int k, double carried, double scale) {
        return bounded((carried + tyreGain[k] * scale) * tyreKeep[k]);
    }

    private static double bounded(double relative) {
        return Math.max(-MOST_RELATIVE, Math.min(relative, MOST_RELATIVE));
    }

    private boolean differs(CarModel after) {
        return !before.powertrain().actsLike(after.powertrain())
                || before.aero().dragM2() != after.aero().dragM2()
                || before.body().massKg() != after.body().massKg();
    }
}
