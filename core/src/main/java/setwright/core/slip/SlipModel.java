package setwright.core.slip;

import setwright.core.car.CarSheet;
import setwright.core.car.model.MountedTyre;
import setwright.core.numerics.UnscentedSmoother;

/*
 * Design note. The single-track car (Milliken and Milliken, Race Car Vehicle Dynamics, SAE 1995, ch. 5, value from memory) with tyre
 * curves that saturate; forces are over the car's mass:
 *
 *   beta' = (Ff + Fr) / v - r - beta ax / v          r' = (a Ff - b Fr) / k^2
 *   Ff = Gf Pf left_f curve((delta - beta - a r / v) / (S / D pf))      Fr likewise with (-beta + b r / v) / (S D pr)
 *
 * P and p are peak force and slip at the peak of the sheet's car in that motion, left = sqrt(1 - along^2) what driving or braking
 * leaves (friction ellipse). Gf, Gr (grip), S, D (slip at the peak, both axles and rear against front) are logarithms that wander
 * slowly, as do the biases of yaw rate and lateral acceleration. Why it works: the difference of both slip angles is exact
 * whatever the tyres; their level follows from beta' over the seconds of a bend, which begins and ends without sideslip.
 */

/** The car as the filter sees it; arrays have one value for each step. */
final class SlipModel implements UnscentedSmoother.Model {
    static final int SIDESLIP = 0;
    static final int YAW_RATE = 1;
    static final int FRONT_GRIP = 2;
    static final int REAR_GRIP = 3;
    static final int PEAK_SLIP = 4;
    static final int SLIP_SPLIT = 5;
    static final int YAW_BIAS = 6;
    static final int LATERAL_BIAS = 7;
    static final int STATES = 8;

    private static final double LEAST_SPEED = 8.0;
    /** Slower recordings are moved on in pieces: at twice this the slowest bends would not be stable. */
    private static final double LONGEST_S = 0.05;

    private final double stepS;
    private final double toFront;
    private final double toRear;
    private final double gyration2;
    private final MountedTyre curve;
    private final double[] wander;
    final double[] speed;
    final double[] steer;
    final double[] forward;
    /** Peaks of front and rear axle after what drives or brakes, m/s², and slip angles there, rad. */
    final double[] frontPeak;

    final double[] rearPeak;
    final double[] frontPeakSlip;
    final double[] rearPeakSlip;

    SlipModel(CarSheet sheet, AxleLoads loads, MountedTyre curve, int count, double stepS, double[] wander) {
        this.stepS = stepS;
        this.toFront = sheet.frontAxleToCentreM();
        this.toRear = sheet.rearAxleToCentreM();
        this.gyration2 = loads.gyration2();
        this.curve = curve;
        this.wander = wander;
        this.speed = new double[count];
        this.steer = new double[count];
        this.forward = new double[count];
        this.frontPeak = new double[count];
        this.rearPeak = new double[count];
        this.frontPeakSlip = new double[count];
        this.rearPeakSlip = new double[count];
    }

    @Override
    public int states() {
        return STATES;
    }

    @Override
    public int readings() {
        return 2;
    }

    @Override
    public int acting() {
        return YAW_BIAS;
    }

    @Override
    public void noise(int step, double[] variance) {
        for (int i = 0; i < STATES; i++) {
            variance[i] = wander[i] * wander[i] * stepS;
        }
    }

    /** Fourth order Runge-Kutta: at 10 m/s a racing car's sideslip dies within a step and a half. */
    @Override
    public void move(int step, double[] state) {
        double frontFactor = Math.exp(state[FRONT_GRIP]);
        double rearFactor = Math.exp(state[REAR_GRIP]);
        double frontSlip = Math.exp(state[PEAK_SLIP] - 0.5 * state[SLIP_SPLIT]);
        double rearSlip = Math.exp(state[PEAK_SLIP] + 0.5 * state[SLIP_SPLIT]);
        int pieces = (int) Math.ceil(stepS / LONGEST_S);
        for (int piece = 0; piece < pieces; piece++) {
            move(step, piece, pieces, state, frontFactor, rearFactor, frontSlip, rearSlip);
        }
    }

    private void move(
            int step,
            int piece,
            int pieces,
            double[] state,
            double frontFactor,
            double rearFactor,
            double frontSlip,
            double rearSlip) {
        double span = stepS / pieces;
        double beta = state[SIDESLIP];
        double rate = state[YAW_RATE];
        double sumBeta = 0.0;
        double sumRate = 0.0;
        double slopeBeta = 0.0;
        double slopeRate = 0.0;
        for (int stage = 0; stage < 4; stage++) {
            double reach = stage == 0 ? 0.0 : stage == 3 ? 1.0 : 0.5;
            double at = (piece + reach) / pieces;
            double atBeta = beta + reach * span * slopeBeta;
            double atRate = rate + reach * span * slopeRate;
            double v = Math.max(mix(speed, step, at), LEAST_SPEED);
            double front = frontFactor
                    * mix(frontPeak, step, at)
                    * curve.share((mix(steer, step, at) - atBeta - toFront * atRate / v)
                            / (frontSlip * mix(frontPeakSlip, step, at)));
            double rear = rearFactor
                    * mix(rearPeak, step, at)
                    * curve.share((toRear * atRate / v - atBeta) / (rearSlip * mix(rearPeakSlip, step, at)));
            slopeBeta = (front + rear - mix(forward, step, at) * atBeta) / v - atRate;
            slopeRate = (toFront * front - toRear * rear) / gyration2;
            double weight = stage == 0 || stage == 3 ? 1.0 : 2.0;
            sumBeta += weight * slopeBeta;
            sumRate += weight * slopeRate;
        }
        state[SIDESLIP] = beta + span / 6.0 * sumBeta;
        state[YAW_RATE] = rate + span / 6.0 * sumRate;
    }

    @Override
    public void read(int step, double[] state, double[] reading) {
        double v = Math.max(speed[step], LEAST_SPEED);
        double front = Math.exp(state[FRONT_GRIP])
                * frontPeak[step]
                * curve.share(frontSlip(step, state[SIDESLIP], state[YAW_RATE], v)
                        / (Math.exp(state[PEAK_SLIP] - 0.5 * state[SLIP_SPLIT]) * frontPeakSlip[step]));
        double rear = Math.exp(state[REAR_GRIP])
                * rearPeak[step]
                * curve.share(rearSlip(state[SIDESLIP], state[YAW_RATE], v)
                        / (Math.exp(state[PEAK_SLIP] + 0.5 * state[SLIP_SPLIT]) * rearPeakSlip[step]));
        reading[0] = state[YAW_RATE] + state[YAW_BIAS];
        reading[1] = front + rear + state[LATERAL_BIAS];
    }

    double frontSlip(int step, double sideslip, double yawRate, double speedMps) {
        return steer[step] - sideslip - toFront * yawRate / speedMps;
    }

    double rearSlip(double sideslip, double yawRate, double speedMps) {
        return toRear * yawRate / speedMps - sideslip;
    }

    private static double mix(double[] values, int step, double share) {
        return values[step] + share * (values[Math.min(step + 1, values.length - 1)] - values[step]);
    }
}
