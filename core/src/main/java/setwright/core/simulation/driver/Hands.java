package setwright.core.simulation.driver;

import java.util.Random;
import setwright.core.car.model.CarModel;
import setwright.core.simulation.vehicle.TransientCar;

/*
 * Design note. The driver sees where the car was a reaction time ago and carries that forward as if it went on turning as it did. He
 * steers for the bend of his line there, and back to the line within his preview distance D: curvature less 2 (e + D psi) / D^2, with
 * the offset e and the course error psi, which makes a well damped second-order return (damping ratio 0.71, frequency 1.4 / preview
 * time). The lock for an arc he knows from experience: wheelbase over radius, plus the car's balance at that cornering force. What he
 * cannot foresee, a slide, he meets a reaction time late. Preview and delay as in the driver models of McRuer and of MacAdam (value
 * from memory).
 */

/** Steering; mutable. */
final class Hands {
    private static final double DAMPING = 0.8;
    private static final double NEAREST_M = 7.0;
    private static final double STEER_RATE = 0.9;
    private static final double MOST_STEER = 0.45;
    private static final double TREND_S = 0.05;
    private static final double MOST_AHEAD = 0.12;
    /** Share of the cornering that is spent on coming back to the line (own choice: more makes slides swing over). */
    private static final double BACK_SHARE = 0.35;

    private static final double NOISE_S = 0.12;

    private final CarFeel feel;
    private final DriverStyle style;
    private final double wheelbase;
    private final double toFront;
    private final Random random;
    private final double[][] seen;
    private int head;
    private boolean full;
    private double angle;
    private double rate;
    private double restless;
    private double slidBefore;
    private double slidTrend;

    Hands(CarModel car, CarFeel feel, DriverStyle style, double stepS, Random random) {
        this.feel = feel;
        this.style = style;
        this.wheelbase = car.body().wheelbaseM();
        this.toFront = car.body().toFrontM();
        this.random = random;
        this.seen = new double[Math.max(1, (int) Math.round(style.delayS() / stepS))][7];
    }

    /** What the driver knows of the car now: where it was a reaction time ago and how it moved. */
    private double[] look(TransientCar car, double stationM) {
        double[] old = seen[head];
        double[] out = full ? old.clone() : null;
        old[0] = car.x();
        old[1] = car.y();
        old[2] = car.heading() + car.sideslipRad();
        old[3] = car.speedMps();
        old[4] = car.yawRate();
        old[5] = stationM;
        old[6] = Math.atan2(car.lateralMps() + toFront * car.yawRate(), Math.max(car.forwardMps(), 1.0));
        head = (head + 1) % seen.length;
        full |= head == 0;
        return out == null ? old.clone() : out;
    }

    /**
     * Moves on.
     *
     * @param hold      whether the wheel is held still
     * @param catching  how far the front wheels are turned to where the car slides to, instead of for the line, 0..1
     * @param factor    on the lock wanted, more than 1 for a driver who winds on
     */
    void step(double stepS, TransientCar car, LinePath path, boolean hold, double catching, double factor) {
        double[] then = look(car, path.stationM());
        double forLine = factor * wanted(then, path, seen.length * stepS);
        double wanted = hold ? angle : forLine + catching * (sliding(then, stepS) - forLine);
        wanted = Math.max(-MOST_STEER, Math.min(wanted, MOST_STEER));
        double share = stepS / NOISE_S;
        restless += -share * restless + Math.sqrt(2.0 * share) * style.scatter().steerRad() * random.nextGaussian();
        double omega = style.handsRadPerS();
        rate += stepS * (omega * omega * (wanted + restless - angle) - 2.0 * DAMPING * omega * rate);
        rate = Math.max(-STEER_RATE, Math.min(rate, STEER_RATE));
        angle += stepS * rate;
    }

    /** Where the front axle will be sliding to when the hands get there: wheels that point there have no slip angle. */
    private double sliding(double[] then, double stepS) {
        double trend = (then[6] - slidBefore) / stepS;
        slidBefore = then[6];
        slidTrend += (trend - slidTrend) * Math.min(1.0, stepS / TREND_S);
        double ahead = slidTrend * (seen.length * stepS + 1.6 / style.handsRadPerS());
        return then[6] + Math.max(-MOST_AHEAD, Math.min(ahead, MOST_AHEAD));
    }

    private double wanted(double[] then, LinePath path, double delay) {
        double speed = Math.max(then[3], 3.0);
        double ahead = delay + 1.6 / style.handsRadPerS();
        double turned = then[4] * ahead;
        double course = then[2] + turned;
        double middle = then[2] + 0.5 * turned;
        double x = then[0] + speed * ahead * Math.cos(middle);
        double y = then[1] + speed * ahead * Math.sin(middle);
        double far = Math.max(NEAREST_M, speed * style.previewS());
        double at = then[5] + speed * ahead;
        double direction = path.directionAt(at);
        double aside = -(x - path.targetX(at)) * Math.sin(direction) + (y - path.targetY(at)) * Math.cos(direction);
        double astray = Math.IEEEremainder(course - direction, 2.0 * Math.PI);
        double most = 1.1 * feel.lateralMps2(speed) / (speed * speed);
        double back = -2.0 * (aside + far * astray) / (far * far);
        // nobody throws the car back to its line: the swing would be worse than the miss
        double curvature = path.curvatureAt(at) + Math.max(-BACK_SHARE * most, Math.min(back, BACK_SHARE * most));
        curvature = Math.max(-most, Math.min(curvature, most));
        double lateral = curvature * speed * speed;
        double balance = Math.abs(lateral) < 1.0e-6 ? 0.0 : feel.balanceRad(speed, lateral);
        return wheelbase * curvature + balance;
    }

    /** Returns the mean angle of the front wheels, rad. */
    double steerRad() {
        return angle;
    }
}
