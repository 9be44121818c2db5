package setwright.core.simulation.driver;

import java.util.Optional;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Equilibrium.Axes;
import setwright.core.car.model.SteadyState;

/** What a driver knows of the car from experience: what it can do at a speed, and how much lock a bend takes. */
final class CarFeel {
    private static final double FIRST_MPS = 8.0;
    private static final int SPEEDS = 9;
    private static final double[] LEVELS = {0.0, 0.35, 0.6, 0.8, 0.9, 0.97};
    private static final int HALVINGS = 14;
    private static final double MOST_MPS2 = 60.0;
    /** Share of an axle's grip up to which a driver leans on it in a straight line. */
    private static final double STRAIGHT_USE = 0.97;

    private final CarModel car;
    private final double step;
    private final double[] lateral = new double[SPEEDS];
    private final double[] braking = new double[SPEEDS];
    private final double[] driving = new double[SPEEDS];
    private final double[][] frontSlip = new double[SPEEDS][LEVELS.length];
    private final double[][] rearSlip = new double[SPEEDS][LEVELS.length];
    private final double topMps;

    CarFeel(CarModel car) {
        this.car = car;
        this.topMps = top(car);
        this.step = (topMps - FIRST_MPS) / (SPEEDS - 1);
        Equilibrium steady = new Equilibrium(car, Axes.PATH);
        for (int i = 0; i < SPEEDS; i++) {
            double speed = FIRST_MPS + i * step;
            lateral[i] = steady.greatestLateral(speed, 0.0)
                    .map(Equilibrium.Limit::lateralMps2)
                    .orElse(1.0);
            for (int k = 1; k < LEVELS.length; k++) {
                Optional<SteadyState> state = steady.at(speed, 0.0, LEVELS[k] * lateral[i]);
                double frontBefore = frontSlip[i][k - 1];
                double rearBefore = rearSlip[i][k - 1];
                frontSlip[i][k] = state.map(SteadyState::frontSlipRad).orElse(frontBefore);
                rearSlip[i][k] = state.map(SteadyState::rearSlipRad).orElse(rearBefore);
            }
            braking[i] = straight(steady, speed, -1.0);
            driving[i] = straight(steady, speed, 1.0);
        }
    }

    /** Returns the speed at which the engine gives what the air takes, m/s. */
    private static double top(CarModel car) {
        double low = 15.0;
        double high = 120.0;
        for (int i = 0; i < 40; i++) {
            double middle = 0.5 * (low + high);
            boolean gains = car.powertrain().driveN(middle) > car.resistanceN(middle);
            low = gains ? middle : low;
            high = gains ? high : middle;
        }
        return low;
    }

    private static double straight(Equilibrium steady, double speed, double sign) {
        double low = 0.5;
        double high = MOST_MPS2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean holds = steady.at(speed, sign * middle, 0.0)
                    .filter(state -> Math.max(state.frontUse(), state.rearUse()) < STRAIGHT_USE)
                    .isPresent();
            low = holds ? middle : low;
            high = holds ? high : middle;
        }
        return low;
    }

    /** Returns a brake force that locks wheels at any speed, N: a quarter more than tyres can take. */
    double greatestBrakeN() {
        return 1.25 * Math.max(braking[0], braking[SPEEDS - 1]) * car.body().massKg();
    }

    double topMps() {
        return topMps;
    }

    /** Returns the greatest lateral acceleration at a speed, m/s². */
    double lateralMps2(double speedMps) {
        return at(lateral, speedMps);
    }

    /** Returns the greatest deceleration in a straight line, m/s². */
    double brakingMps2(double speedMps) {
        return at(braking, speedMps);
    }

    /** Returns the acceleration in a straight line that the tyres would take, m/s². */
    double tractionMps2(double speedMps) {
        return at(driving, speedMps);
    }

    /** Returns the acceleration in a straight line that tyres and engine give, m/s². */
    double drivingMps2(double speedMps) {
        double engine = (car.powertrain().driveN(speedMps) - car.resistanceN(speedMps))
                / car.body().massKg();
        return Math.min(at(driving, speedMps), engine);
    }

    /** Returns the deceleration with both feet up, m/s². */
    double coastingMps2(double speedMps) {
        return (car.resistanceN(speedMps) + car.engineBrakingN(speedMps))
                / car.body().massKg();
    }

    /** Returns the balance angle that belongs to a bend, rad, with the sign of the bend. */
    double balanceRad(double speedMps, double lateralMps2) {
        return slipRad(true, speedMps, lateralMps2) - slipRad(false, speedMps, lateralMps2);
    }

    /** Returns the slip angle of an axle that belongs to a bend, rad, with the sign of the bend. */
    double slipRad(boolean isFront, double speedMps, double lateralMps2) {
        double[][] slip = isFront ? frontSlip : rearSlip;
        double share = Math.min(Math.abs(lateralMps2) / lateralMps2(speedMps), LEVELS[LEVELS.length - 1]);
        int level = 1;
        while (level < LEVELS.length - 1 && LEVELS[level] < share) {
            level++;
        }
        double part = (share - LEVELS[level - 1]) / (LEVELS[level] - LEVELS[level - 1]);
        double place = place(speedMps);
        int i = (int) place;
        double rest = place - i;
        double low = mix(slip[i][level - 1], slip[i][level], part);
        double high = mix(slip[i + 1][level - 1], slip[i + 1][level], part);
        return Math.copySign(1.0, lateralMps2) * mix(low, high, rest);
    }

    private double at(double[] values, double speedMps) {
        double place = place(speedMps);
        int i = (int) place;
        return mix(values[i], values[i + 1], place - i);
    }

    private double place(double speedMps) {
        return Math.max(0.0, Math.min((speedMps - FIRST_MPS) / step, SPEEDS - 1.001));
    }

    private static double mix(double one, double other, double share) {
        return one + share * (other - one);
    }
}
