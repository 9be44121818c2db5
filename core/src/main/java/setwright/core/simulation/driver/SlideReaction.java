package setwright.core.simulation.driver;

import java.util.ArrayList;
import java.util.List;
import setwright.core.simulation.vehicle.TransientCar;

/**
 * What a driver does about a slide that he feels: the slip angle beyond what belongs to the bend, seen a reaction time late. A car
 * that is about to turn round is caught by anyone who can, looking ahead by how quickly it comes round.
 */
final class SlideReaction {
    /** A slide is felt from here; racing drivers sense less than the degree of sideslip that is usually given (own choice). */
    private static final double FELT_RAD = Math.toRadians(0.8);

    /** An axle below this share of its slip at the peak, where it gives nine tenths of its force, does not slide (own choice). */
    private static final double SLIDING_USE = 0.55;

    /** Beyond this wheels are about to lock or to spin, and a driver feels it in pedal and car. */
    private static final double OVERDONE_USE = 1.05;

    private static final double OVER_RAD = Math.toRadians(0.4);
    private static final double DANGER_RAD = Math.toRadians(3.0);
    /** From this much on, the hands only catch the car and forget the line. */
    private static final double WHOLE_RAD = Math.toRadians(7.0);

    private static final double LONGEST_HOLD_S = 0.6;
    private static final double LIFT_S = 0.35;
    private static final double WIND_ON = 1.25;
    private static final double SLOWEST = 8.0;
    /** Time over which he sees how quickly the slide grows, s. */
    private static final double TREND_S = 0.05;

    private static final double MOST_TREND_RAD = Math.toRadians(6.0);

    private final CarFeel feel;
    private final DriverStyle style;
    private final double stepS;
    /** Slip angle of the sliding axle beyond that of the bend, rad, left positive, from now back by reaction time and trend. */
    private final double[] beside;

    private final double[] used;
    /** +1 the front slides, -1 the rear, 0 neither. */
    private final int[] axle;

    private final int delay;
    private final List<DriverEvent> events = new ArrayList<>();
    private int head;
    private Reaction now = Reaction.NONE;
    private boolean rear;
    private double since;
    private double sinceStation;
    private double lifted;
    private double catching;
    private boolean rearInDanger;
    private boolean overdone;

    SlideReaction(CarFeel feel, DriverStyle style, double stepS) {
        this.feel = feel;
        this.style = style;
        this.stepS = stepS;
        this.delay = Math.max(1, (int) Math.round(style.delayS() / stepS));
        int length = delay + (int) Math.round(TREND_S / stepS) + 1;
        this.beside = new double[length];
        this.used = new double[length];
        this.axle = new int[length];
    }

    /** Moves on to a time, s. */
    void step(double timeS, TransientCar car, int lap, double stationM) {
        see(car);
        int then = Math.floorMod(head - delay, beside.length);
        int before = Math.floorMod(head + 1, beside.length);
        double seen = beside[then];
        double size = axle[then] == 0 ? 0.0 : Math.abs(seen);
        boolean rearNow = axle[then] < 0;
        overdone = used[then] > OVERDONE_USE;
        rearInDanger = rearNow && size > DANGER_RAD;
        lifted = Math.max(0.0, lifted - stepS);
        if (now == Reaction.NONE && size > FELT_RAD) {
            begin(rearNow, timeS, stationM);
        } else if (now != Reaction.NONE) {
            boolean tooLong = now == Reaction.HOLD && (timeS - since > LONGEST_HOLD_S || rearInDanger);
            if (size < OVER_RAD || rearNow != rear || tooLong) {
                events.add(new DriverEvent(now, rear, since, timeS, lap, sinceStation));
                now = Reaction.NONE;
            }
        }
        if (now == Reaction.LIFT || rearInDanger) {
            lifted = LIFT_S;
        }
        double ahead = (seen - beside[before]) / TREND_S * (delay * stepS + 1.6 / style.handsRadPerS());
        double expected = Math.abs(seen + Math.max(-MOST_TREND_RAD, Math.min(ahead, MOST_TREND_RAD)));
        boolean corrects = (now == Reaction.CORRECT && rear) || rearInDanger;
        catching = corrects ? Math.max(0.0, Math.min((expected - OVER_RAD) / WHOLE_RAD, 1.0)) : 0.0;
    }

    private void begin(boolean rearNow, double timeS, double stationM) {
        rear = rearNow;
        now = rear ? style.rearSlides() : style.frontSlides();
        since = timeS;
        sinceStation = stationM;
    }

    private void see(TransientCar car) {
        head = (head + 1) % beside.length;
        used[head] = Math.max(car.use(true), car.use(false));
        axle[head] = 0;
        beside[head] = 0.0;
        if (car.speedMps() > SLOWEST) {
            double rearMore = more(car, false);
            double frontMore = more(car, true);
            boolean isRear = Math.abs(rearMore) > Math.abs(frontMore);
            // more of the slip that the axle has, not less
            boolean slides = (isRear ? rearMore * car.slip(false) : frontMore * car.slip(true)) > 0.0;
            axle[head] = !slides || car.use(!isRear) < SLIDING_USE ? 0 : isRear ? -1 : 1;
            beside[head] = isRear ? rearMore : frontMore;
        }
    }

    /** Slip angle of an axle beyond what belongs to the bend, rad, left positive. */
    private double more(TransientCar car, boolean isFront) {
        return car.slip(isFront) - feel.slipRad(isFront, car.speedMps(), car.lateralMps2());
    }

    boolean holds() {
        return now == Reaction.HOLD;
    }

    /** Returns how far the hands catch the car instead of following the line, 0..1. */
    double catching() {
        return catching;
    }

    /** Returns the factor on the lock that the driver would want. */
    double lockFactor() {
        return now == Reaction.WIND_ON && !rear ? WIND_ON : 1.0;
    }

    /** Returns the share of the throttle that is kept. */
    double throttleKept() {
        return lifted > 0.0 ? 0.4 : overdone ? 0.7 : 1.0;
    }

    /** Returns the share of the brake that is kept: a rear that comes round is given its grip back. */
    double brakeKept() {
        if (rearInDanger) {
            return 0.15;
        }
        return now != Reaction.NONE && rear ? 0.6 : overdone ? 0.75 : 1.0;
    }

    List<DriverEvent> events() {
        return List.copyOf(events);
    }
}
