package setwright.core.simulation.driver;

import java.util.ArrayList;
import java.util.List;
import setwright.core.simulation.vehicle.TransientCar;

/**
 * What a driver does about a slide that he feels: seen a reaction time late, as the balance angle beside what belongs to the bend.
 * A car that is about to turn round is caught by anyone who can.
 */
final class SlideReaction {
    /** A slide is felt from here: the just noticeable change of sideslip is about a degree (value from memory). */
    private static final double FELT_RAD = Math.toRadians(1.2);

    /** An axle that works below this share of its slip at the peak does not slide, whatever the other does. */
    private static final double SLIDING_USE = 0.8;

    /** Beyond this wheels are about to lock or to spin, and a driver feels it in pedal and car. */
    private static final double OVERDONE_USE = 1.05;

    private static final double OVER_RAD = Math.toRadians(0.5);
    private static final double DANGER_RAD = Math.toRadians(3.0);
    private static final double LONGEST_HOLD_S = 0.6;
    private static final double LIFT_S = 0.35;
    private static final double WIND_ON = 1.25;
    private static final double SLOWEST = 8.0;

    private final CarFeel feel;
    private final DriverStyle style;
    private final double[] felt;
    private final double[] usedThen;
    private final List<DriverEvent> events = new ArrayList<>();
    private int head;
    private Reaction now = Reaction.NONE;
    private boolean rear;
    private double since;
    private double sinceStation;
    private double lifted;
    private double counter;
    private boolean danger;
    private boolean overdone;

    SlideReaction(CarFeel feel, DriverStyle style, double stepS) {
        this.feel = feel;
        this.style = style;
        this.felt = new double[Math.max(1, (int) Math.round(style.delayS() / stepS))];
        this.usedThen = new double[felt.length];
    }

    /** Moves on to a time, s. */
    void step(double stepS, double timeS, TransientCar car, int lap, double stationM) {
        double slide = slide(car);
        double old = felt[head];
        felt[head] = slide;
        lifted = Math.max(0.0, lifted - stepS);
        danger = Math.abs(old) > DANGER_RAD;
        overdone = usedThen[head] > OVERDONE_USE;
        usedThen[head] = Math.max(car.use(true), car.use(false));
        head = (head + 1) % felt.length;
        boolean rearNow = old < 0.0;
        double size = Math.abs(old);
        if (now == Reaction.NONE && size > FELT_RAD) {
            rear = rearNow;
            Reaction reaction = rear ? style.rearSlides() : style.frontSlides();
            if (reaction != Reaction.NONE) {
                now = reaction;
                since = timeS;
                sinceStation = stationM;
            }
        } else if (now != Reaction.NONE) {
            boolean tooLong = now == Reaction.HOLD && (timeS - since > LONGEST_HOLD_S || (danger && rear));
            if (size < OVER_RAD || rearNow != rear || tooLong) {
                events.add(new DriverEvent(now, rear, since, timeS, lap, sinceStation));
                now = Reaction.NONE;
            }
        }
        if (now == Reaction.LIFT || (danger && rearNow)) {
            lifted = LIFT_S;
        }
        boolean corrects = (now == Reaction.CORRECT && rear) || (danger && rearNow);
        // the slide's own angle, with the sign of the bend that the car is in
        counter = corrects ? side(car) * Math.min(old + OVER_RAD, 0.0) : 0.0;
    }

    /** Balance angle beside that of the bend, rad; negative when the rear slides. */
    private double slide(TransientCar car) {
        if (car.speedMps() < SLOWEST) {
            return 0.0;
        }
        double lateral = car.lateralMps2();
        double balance = car.slip(true) - car.slip(false);
        double beside = side(car) * (balance - feel.balanceRad(car.speedMps(), lateral));
        return car.use(beside > 0.0) > SLIDING_USE ? beside : 0.0;
    }

    private static double side(TransientCar car) {
        return car.lateralMps2() >= 0.0 ? 1.0 : -1.0;
    }

    boolean holds() {
        return now == Reaction.HOLD;
    }

    /** Returns the steer against the slide, rad. */
    double counterRad() {
        return counter;
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
        if (danger && felt[head] < 0.0) {
            return 0.15;
        }
        return now != Reaction.NONE && rear ? 0.6 : overdone ? 0.75 : 1.0;
    }

    List<DriverEvent> events() {
        return List.copyOf(events);
    }
}
