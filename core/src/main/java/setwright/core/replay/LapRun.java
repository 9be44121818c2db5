package setwright.core.replay;

import java.util.Arrays;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Cornering;
import setwright.core.car.model.Moment;

/*
 * Design note. "The driver keeps the same utilisation" is made exact like this: at each moment the driven car used its limiting
 * axle to U0. The changed car, asked for the same accelerations, would use it to U1. The scale of all accelerations that
 * brings U1 back to U0 is the margin that the change gave; it becomes speed in `TimeGain`, and balance is compared at that speed. Both axles count, the
 * limiting one most, by a power mean: at the limit nobody can tell which of two nearly equal axles will go first.
 */

/** A car driven along a recorded lap: use of the axles and balance at each moment. */
public final class LapRun {
    /** Loads follow the body at every moment; tyres are asked at every other one. */
    private static final int STRIDE = 2;

    private static final double EPSILON = 0.02;
    /** Below this use of the tyres nothing is limited by them. */
    static final double LEAST_USE = 0.3;

    private static final double LEAST_ELASTICITY = 0.5;
    /** No single change moves the limit by more; what asks for more is beyond what the model may be asked. */
    private static final double MOST_SCALE = 0.15;

    private final DrivenLap lap;
    private final CarModel car;
    private final boolean phasesOnly;
    private final double[] loads;
    private final double[] use;
    private final double[] elasticity;
    private final double[] balance;

    private LapRun(DrivenLap lap, CarModel car, boolean phasesOnly, double[] loads) {
        this.lap = lap;
        this.car = car;
        this.phasesOnly = phasesOnly;
        this.loads = loads;
        this.use = new double[lap.size()];
        this.elasticity = new double[lap.size()];
        this.balance = new double[lap.size()];
    }

    /**
     * Drives a car along a lap as it was driven.
     *
     * @param car           the car
     * @param lap           the lap
     * @param leastLateral  lateral acceleration below which the balance angle is left out, m/s²
     */
    public static LapRun of(CarModel car, DrivenLap lap, double leastLateral) {
        return of(car, lap, leastLateral, false, LapLoads.of(car, lap));
    }

    /** The same where nobody asks for what lies between the phases of the corners: there the tyres are left alone. */
    public static LapRun ofPhases(CarModel car, DrivenLap lap, double leastLateral) {
        return of(car, lap, leastLateral, true, LapLoads.of(car, lap));
    }

    /** Drives another car along this lap; arguments as above. */
    public LapRun with(CarModel other, double leastLateral) {
        return of(other, lap, leastLateral, phasesOnly, loadsOf(other));
    }

    private static LapRun of(CarModel car, DrivenLap lap, double leastLateral, boolean phasesOnly, double[] loads) {
        LapRun run = new LapRun(lap, car, phasesOnly, loads);
        Cornering cornering = new Cornering(car);
        Arrays.fill(run.use, Double.NaN);
        Arrays.fill(run.balance, Double.NaN);
        for (int k = 0; k < lap.size(); k += STRIDE) {
            if (phasesOnly && lap.phase()[k] < 0) {
                continue;
            }
            Moment moment = lap.moments().get(k);
            cornering.at(moment, run.loads, 4 * k, 1.0);
            double use = limiting(cornering);
            boolean cornersHard = Math.abs(moment.lateral()) > leastLateral;
            run.balance[k] = cornersHard ? cornering.balance() : Double.NaN;
            run.use[k] = use > LEAST_USE ? use : Double.NaN;
        }
        return run;
    }

    /** Finds how the use of the limiting axle grows with all accelerations, which a comparison needs. */
    LapRun prepared() {
        Cornering cornering = new Cornering(car);
        for (int k = 0; k < lap.size(); k += STRIDE) {
            if (!Double.isNaN(use[k])) {
                cornering.at(lap.moments().get(k), loads, 4 * k, 1.0 + EPSILON);
                elasticity[k] =
                        Math.max(Math.log(limiting(cornering) / use[k]) / Math.log1p(EPSILON), LEAST_ELASTICITY);
            }
        }
        return this;
    }

    /**
     * Returns the wheel loads of a changed car on this lap; this car's own where the change moves no load.
     */
    double[] loadsOf(CarModel changed) {
        boolean same = changed.body().equals(car.body())
                && changed.aero().equals(car.aero())
                && changed.yawInertiaKgM2() == car.yawInertiaKgM2()
                && changed.raisedFrontM() == car.raisedFrontM()
                && changed.raisedRearM() == car.raisedRearM();
        return same ? loads : LapLoads.of(changed, lap);
    }

    /**
     * Finds by how much a changed car may be driven harder with the same use of its limiting axle.
     *
     * @param changed       the car
     * @param changedLoads  its wheel loads
     * @param scale         receives the logarithm of the scale of all accelerations; 0 where tyres do not limit
     */
    void margins(CarModel changed, double[] changedLoads, double[] scale) {
        Cornering cornering = new Cornering(changed);
        for (int k = 0; k < lap.size(); k++) {
            if (k % STRIDE != 0) {
                scale[k] = scale[k - 1];
            } else if (Double.isNaN(use[k])) {
                scale[k] = 0.0;
            } else {
                cornering.at(lap.moments().get(k), changedLoads, 4 * k, 1.0);
                double log = -Math.log(limiting(cornering) / use[k]) / elasticity[k];
                scale[k] = Math.max(-MOST_SCALE, Math.min(log, MOST_SCALE));
            }
        }
    }

    /**
     * Finds the change of the balance angle at the speed at which the changed car comes along.
     *
     * @param changed       the car
     * @param changedLoads  its wheel loads
     * @param faster        relative change of the squared speed at each moment
     * @param balanceChange receives the change, rad; NaN where unknown
     */
    void balances(CarModel changed, double[] changedLoads, double[] faster, double[] balanceChange) {
        Cornering cornering = new Cornering(changed);
        for (int k = 0; k < lap.size(); k++) {
            balanceChange[k] = Double.NaN;
            if (k % STRIDE == 0 && !Double.isNaN(balance[k])) {
                cornering.at(lap.moments().get(k), changedLoads, 4 * k, 1.0 + faster[k]);
                balanceChange[k] = cornering.balance() - balance[k];
            }
        }
    }

    /** Returns the use of the limiting axle at a moment, 1 at its limit; NaN where tyres do not limit. */
    public double use(int k) {
        return use[k];
    }

    /** Returns the balance angle at a moment, rad; NaN where the car hardly corners. */
    public double balance(int k) {
        return balance[k];
    }

    static double limiting(Cornering cornering) {
        double front = cornering.frontUse();
        double rear = cornering.rearUse();
        double most = Math.max(front, rear);
        if (most <= 0.0) {
            return 0.0;
        }
        double ratio = Math.min(front, rear) / most;
        double square = ratio * ratio;
        double eighth = square * square * square * square;
        return most * Math.sqrt(Math.sqrt(Math.sqrt(0.5 * (1.0 + eighth))));
    }
}
