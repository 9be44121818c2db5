package setwright.core.simulation.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import setwright.core.car.model.CarModel;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.driver.SpeedPlan.Trust;
import setwright.core.simulation.vehicle.Inputs;
import setwright.core.simulation.vehicle.TransientCar;

/*
 * Design note. A driver first laps without a logger until he knows what the car takes in each corner (CornerTrust); what he has then
 * learnt is kept for the recorded laps. Random numbers of the laps and of the hands come from two streams, so that two
 * setups driven with one seed meet the same driver in the same mood.
 */

/** Drives stints: the whole car in time, with a driver in it. */
public final class StintSimulator {
    /** Time between samples of the history, s. */
    public static final double RECORD_S = 0.004;

    private static final int STEPS_PER_RECORD = (int) Math.round(RECORD_S / TransientCar.STEP_S);
    private static final double FIRST_TRUST = 0.87;
    private static final double OUT_LAP_PACE = 0.86;
    private static final double AFTER_S = 1.0;
    private static final int MOST_LOST = 10;

    private final StintPlan plan;
    private final ReferenceLine line;
    private final CarFeel feel;
    private final List<Corner> corners;
    private final CornerTrust trust;

    private StintSimulator(StintPlan plan) {
        this.plan = plan;
        this.line = plan.line();
        this.feel = new CarFeel(plan.car());
        int n = line.nodeCount();
        double[] one = new double[n];
        java.util.Arrays.fill(one, FIRST_TRUST);
        double[] speeds = new SpeedPlan(line, feel, plan.style(), new Trust(one, one, one)).speeds();
        this.corners = BendSplitter.split(line, speeds);
        this.trust = new CornerTrust(corners.size(), FIRST_TRUST);
    }

    /** Drives a stint. */
    public static DrivenStint drive(StintPlan plan) {
        return learnt(plan).drive(plan.style().scatter(), plan.flying(), plan.seed());
    }

    /** Lets the driver practise; what he has learnt then serves any number of stints. */
    public static StintSimulator learnt(StintPlan plan) {
        StintSimulator simulator = new StintSimulator(plan);
        simulator.practise();
        return simulator;
    }

    /**
     * Drives a stint with what was learnt; several may be driven at once.
     *
     * @param scatter  how the driver differs from himself
     * @param flying   laps after the out lap, &gt;= 1
     * @param seed     the same seed gives the same laps
     */
    public DrivenStint drive(DriverScatter scatter, int flying, long seed) {
        return record(plan.style().withScatter(scatter), flying, seed);
    }

    private void practise() {
        int lost = 0;
        int laps = 0;
        while (laps < plan.practice() && lost < MOST_LOST) {
            Run run = new Run(plan.style().withScatter(DriverScatter.NONE), 1.0, plan.seed());
            while (laps < plan.practice() && run.lap(1.0)) {
                run.watch.teach(trust, plan.style().effort(), true);
                laps++;
            }
            // a lap that never ends is as good as lost
            if (laps < plan.practice()) {
                lost++;
                run.watch.teach(trust, plan.style().effort(), false);
                run.watch.lastCorner().ifPresent(trust::frighten);
            }
        }
        trust.settle();
    }

    private DrivenStint record(DriverStyle style, int flying, long seed) {
        Run run = new Run(style, OUT_LAP_PACE, seed);
        run.history = Optional.of(new DriveHistory.Builder(RECORD_S));
        List<Double> laps = new ArrayList<>();
        boolean going = true;
        for (int lap = 0; going && lap <= flying; lap++) {
            double before = run.time;
            going = run.lap(lap == 0 ? OUT_LAP_PACE : 1.0);
            if (going) {
                laps.add(run.time - before);
            }
        }
        if (going) {
            run.on(AFTER_S);
        }
        Optional<DrivenStint.Lost> lost =
                going ? Optional.empty() : Optional.of(new DrivenStint.Lost(run.lap, run.path.stationM()));
        return new DrivenStint(run.history.orElseThrow().build(), laps, run.driver.events(), lost);
    }

    /** One drive from the start line on. */
    private final class Run {
        private final DriverStyle style;
        private final Random mood;
        private final TransientCar car;
        private final Driver driver;
        private final UseWatch watch;
        private Optional<DriveHistory.Builder> history = Optional.empty();
        private final double[] sample = new double[Signal.count()];
        private CarModel model;
        private LinePath path;
        private LapIntent intent;
        private double time;
        private double distance;
        private long steps;
        private int lap = 1;

        Run(DriverStyle style, double pace, long seed) {
            this.style = style;
            this.mood = new Random(seed);
            this.model = plan.car();
            this.intent = intend(pace);
            double speed = intent.speedAt(0.0);
            this.car = new TransientCar(model, plan.gear(), plan.condition(), speed, feel.greatestBrakeN());
            this.driver = new Driver(
                    model, feel, style, car.greatestBrakeN(), TransientCar.STEP_S, new Random(seed ^ 0x5DEECE66DL));
            this.path = new LinePath(line, intent.offsets());
            this.watch = new UseWatch(line, corners);
            car.place(line.x(0), line.y(0), line.heading(0));
            path.follow(car.x(), car.y());
        }

        private LapIntent intend(double pace) {
            return LapIntent.of(line, corners, feel, style, trust, pace, mood);
        }

        /** Drives to the start line; tells whether the car got there. */
        boolean lap(double pace) {
            if (steps > 0) {
                intent = intend(pace);
                LinePath next = new LinePath(line, intent.offsets());
                next.follow(car.x(), car.y());
                path = next;
                if (plan.tank().burns()) {
                    model = plan.tank().after(plan.car(), distance);
                    car.become(model);
                }
            }
            double begun = time;
            double patience = 20.0 + line.lengthM() / 12.0;
            while (time - begun < patience) {
                double before = path.stationM();
                step();
                if (car.lost()) {
                    return false;
                }
                if (path.stationM() < before - 0.5 * line.lengthM()) {
                    lap++;
                    return true;
                }
            }
            return false;
        }

        void on(double seconds) {
            double until = time + seconds;
            while (time < until && !car.lost()) {
                step();
            }
        }

        private void step() {
            double dt = TransientCar.STEP_S;
            Inputs inputs = driver.act(dt, time, car, path, intent, lap);
            double station = path.stationM();
            double speed = car.speedMps();
            car.step(
                    dt,
                    inputs,
                    plan.bumps().forceN(model, true, station, speed),
                    plan.bumps().forceN(model, false, station, speed));
            path.follow(car.x(), car.y());
            time += dt;
            distance += dt * car.speedMps();
            double miss = path.offsetM() - path.meantM();
            watch.step(dt, car, inputs, path.stationM(), miss);
            if (history.isPresent() && steps % STEPS_PER_RECORD == 0) {
                car.write(sample);
                sample[Signal.FUEL.index()] = plan.tank().leftKg(distance);
                sample[Signal.STATION.index()] = path.stationM();
                sample[Signal.OFFSET.index()] = path.offsetM();
                sample[Signal.LAP.index()] = lap;
                history.get().add(sample);
            }
            steps++;
        }
    }
}
