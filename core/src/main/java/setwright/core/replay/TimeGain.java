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

    private static final int ROUNDS = 2;

    private final DrivenLap lap;
    private final CarModel before;
    private final DriveTable same;
    private final boolean[] rising;
    private final double[] relative;

    TimeGain(DrivenLap lap, CarModel before) {
        this.lap = lap;
        this.before = before;
        this.same = DriveTable.of(before);
        this.rising = SpeedTrend.rising(lap);
        this.relative = new double[lap.size()];
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
        DriveTable table = differs(after) ? DriveTable.of(before, after) : same;
        double carried = 0.0;
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 0; k < count; k++) {
                if (rising[k]) {
                    carried = forward(k, carried, scale[k], table);
                    relative[k] = carried;
                } else {
                    carried = scale[k]; // the slowest point ahead is set by its own grip, see backward
                }
            }
            double back = relative[0];
            for (int k = count - 1; k >= 0; k--) {
                if (rising[k]) {
                    back = relative[k];
                } else {
                    back = backward(k, back, scale[k], table);
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

    private double forward(int k, double carried, double scale, DriveTable table) {
        Moment moment = lap.moments().get(k);
        double w = moment.speed() * moment.speed();
        double distance = moment.speed() * lap.stepS();
        if (moment.throttle() >= FULL) {
            return onEngine(moment, carried, distance, w, table);
        }
        return onTyres(moment, carried, scale, distance, w);
    }

    private double backward(int k, double back, double scale, DriveTable table) {
        Moment moment = lap.moments().get(k);
        double w = moment.speed() * moment.speed();
        double distance = moment.speed() * lap.stepS();
        if (moment.throttle() >= FULL) {
            return onEngine(moment, back, -distance, w, table);
        }
        return onTyres(moment, back, scale, distance, w);
    }

    private double onEngine(Moment moment, double relative, double distance, double w, DriveTable table) {
        double extra = table.extraN(moment.speed(), relative) / before.body().massKg();
        double next = moment.speed() + moment.forward() * lap.stepS();
        if (next > moment.speed() && distance > 0.0) {
            // while the gears change nothing drives: an impulse that the driven lap holds already for its own changes
            extra -= table.extraShifts(moment.speed(), next) * moment.forward() * SHIFT_S / lap.stepS();
        }
        double dilution = 2.0 * distance * moment.forward() / w;
        return bounded((relative + 2.0 * distance * extra / w) / Math.max(1.0 + dilution, 0.5));
    }

    /** The same form on the way in and on the way out: away from the slowest point, w grows with the margin of |ax|. */
    private double onTyres(Moment moment, double relative, double scale, double distance, double w) {
        double along = Math.abs(moment.forward()
                + before.resistanceN(moment.speed()) / before.body().massKg());
        double used = Math.max(along, LEAST_ALONG);
        double lateral = moment.lateral() * moment.lateral();
        double whole = along * along + lateral;
        double gain = 2.0 * distance * whole * scale / (used * w);
        double loss = 2.0 * distance * lateral / (used * w);
        // w itself changes along the way: relative change is diluted as w grows and condensed as it falls
        double dilution = 2.0 * distance * Math.abs(moment.forward()) / w;
        return bounded((relative + gain) / (1.0 + loss + dilution));
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
