package setwright.core.identification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Moment;
import setwright.core.numerics.Robust;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.LapRun;

/*
 * Design note. Four kinds of evidence, each as residuals over their standard deviation:
 *
 *   - balance: mean measured less mean modelled balance angle of each corner and phase. What remains is not noise but what a
 *     model of this kind cannot say; published observers of slip miss by half a degree on average (Meccanica 2021,
 *     abstract seen), and so it is weighed;
 *   - grip: where a corner asks most, a driver uses nearly all that the limiting axle has. Corners that are flat out tell
 *     nothing. Ninety-two hundredths; more than the limit cannot be, a good deal less can (a driver keeps something in
 *     hand, or the line and not the grip limits him);
 *   - drive: acceleration at full throttle on straights, by speed;
 *   - brakes: front share of the force from the slip of the wheels, where their speeds were recorded.
 */

/** What the laps of one stint show of the car, compared with a model of it. */
final class StintEvidence {
    private static final int PHASES = DrivenLap.PHASES;
    private static final double BALANCE_SD = Math.toRadians(0.5);
    private static final double USE = 0.92;
    private static final double USE_SD_BELOW = 0.12;
    private static final double USE_SD_ABOVE = 0.04;
    private static final double DRIVE_SD = 0.3;
    private static final int MOST_LAPS = 3;
    private static final double TOP_SHARE = 0.8;
    private static final double FULL_THROTTLE = 0.95;
    private static final double STRAIGHT_MPS2 = 3.0;
    private static final double BIN_MPS = 4.0;
    private static final double SLOWEST_MPS = 15.0;
    private static final int LEAST_IN_BIN = 10;
    private static final int LEAST_IN_CELL = 6;
    /** Wheels, gears and engine turn faster as the car does: about a twentieth more mass (common practice). */
    static final double ROTATING = 1.05;

    private final CarAssembler assembler;
    private final List<DrivenLap> laps;
    private final double leastLateral;
    private final List<double[]> drive;
    private final List<int[]> cells;
    private final int corners;
    private final BrakeSplit brakes;
    /** By lap and corner: the moments after braking, where a driver uses what there is. */
    private final List<int[][]> afterBraking;

    StintEvidence(CarSheet sheet, List<DrivenLap> all, int corners, double leastLateral, BrakeSplit brakes) {
        this.assembler = new CarAssembler(sheet);
        this.leastLateral = leastLateral;
        this.corners = corners;
        this.brakes = brakes;
        this.laps = new ArrayList<>();
        int used = Math.min(MOST_LAPS, all.size());
        for (int i = 0; i < used; i++) {
            laps.add(all.get((int) ((i + 0.5) * all.size() / used)));
        }
        this.afterBraking = laps.stream().map(this::afterBraking).toList();
        this.drive = straights(all);
        this.cells = new ArrayList<>();
        int[] counts = counts();
        for (int cell = 0; cell < counts.length; cell++) {
            if (counts[cell] >= LEAST_IN_CELL) {
                cells.add(new int[] {cell / PHASES, cell % PHASES});
            }
        }
    }

    int size() {
        return cells.size() + corners + drive.size() + 1;
    }

    /**
     * Returns what gives residuals over their standard deviations for parameters about the given ones: what moves no wheel load does
     * not need the body's movement anew.
     */
    Function<double[], double[]> about(double[] parameters) {
        List<LapRun> base = driven(assembler.build(parameters));
        return moved -> {
            CarModel car = assembler.build(moved);
            boolean same = Arrays.equals(moved, parameters);
            return residuals(
                    car,
                    same
                            ? base
                            : base.stream()
                                    .map(run -> run.with(car, leastLateral))
                                    .toList());
        };
    }

    private double[] residuals(CarModel car, List<LapRun> driven) {
        Run run = run(driven);
        double[] out = new double[size()];
        int at = 0;
        for (int[] cell : cells) {
            int i = PHASES * cell[0] + cell[1];
            out[at++] = (run.modelled[i] - run.measured[i]) / run.weight[i] / BALANCE_SD;
        }
        for (int corner = 0; corner < corners; corner++) {
            double use = Robust.median(run.uses[corner]);
            double away = Double.isFinite(use) && use > 0.0 ? Math.log(use / USE) : 0.0;
            out[at++] = away / (away > 0.0 ? USE_SD_ABOVE : USE_SD_BELOW);
        }
        for (double[] bin : drive) {
            out[at++] = (modelled(car, bin[0]) - bin[1]) / DRIVE_SD;
        }
        out[at] =
                Double.isFinite(brakes.share()) ? (car.brakes().frontShare() - brakes.share()) / brakes.spread() : 0.0;
        return out;
    }

    /** Returns measured and modelled balance angle of each corner and phase, deg. */
    double[][] balances(double[] parameters) {
        Run run = run(driven(assembler.build(parameters)));
        double[][] out = new double[2][cells.size()];
        for (int c = 0; c < cells.size(); c++) {
            int i = PHASES * cells.get(c)[0] + cells.get(c)[1];
            out[0][c] = Math.toDegrees(run.measured[i] / run.weight[i]);
            out[1][c] = Math.toDegrees(run.modelled[i] / run.weight[i]);
        }
        return out;
    }

    private List<LapRun> driven(CarModel car) {
        return laps.stream().map(lap -> LapRun.ofPhases(car, lap, leastLateral)).toList();
    }

    private Run run(List<LapRun> driven) {
        Run out = new Run(corners);
        for (int l = 0; l < driven.size(); l++) {
            DrivenLap lap = laps.get(l);
            LapRun run = driven.get(l);
            for (int k = 0; k < lap.size(); k++) {
                if (lap.phase()[k] >= 0 && Double.isFinite(run.balance(k)) && Double.isFinite(lap.balance()[k])) {
                    double w = Math.abs(lap.moments().get(k).lateral());
                    int cell = PHASES * lap.corner()[k] + lap.phase()[k];
                    out.weight[cell] += w;
                    out.modelled[cell] += w * run.balance(k);
                    out.measured[cell] += w * lap.balance()[k];
                }
            }
            for (int corner = 0; corner < corners; corner++) {
                out.uses[corner] =
                        join(out.uses[corner], top(run, lap, afterBraking.get(l)[corner]));
            }
        }
        return out;
    }

    /** Sums over the laps for each corner and phase. */
    private static final class Run {
        private final double[] weight;
        private final double[] modelled;
        private final double[] measured;
        private final double[][] uses;

        private Run(int corners) {
            weight = new double[PHASES * corners];
            modelled = new double[PHASES * corners];
            measured = new double[PHASES * corners];
            uses = new double[corners][0];
        }
    }

    /** Acceleration that a car makes at full throttle on a straight, m/s². */
    static double modelled(CarModel car, double speed) {
        return (car.powertrain().driveN(speed) - car.resistanceN(speed))
                / (ROTATING * car.body().massKg());
    }

    /** Returns speed, m/s, acceleration, m/s², and number of moments of each bin at full throttle on straights. */
    List<double[]> drive() {
        return drive;
    }

    /** Moments of each corner and phase that tell of the balance. */
    private int[] counts() {
        int[] counts = new int[PHASES * corners];
        for (DrivenLap lap : laps) {
            for (int k = 0; k < lap.size(); k++) {
                boolean seen = lap.phase()[k] >= 0
                        && Math.abs(lap.moments().get(k).lateral()) > leastLateral
                        && Double.isFinite(lap.balance()[k]);
                if (seen) {
                    counts[PHASES * lap.corner()[k] + lap.phase()[k]]++;
                }
            }
        }
        return counts;
    }

    private int[][] afterBraking(DrivenLap lap) {
        int[][] moments = new int[corners][];
        for (int corner = 0; corner < corners; corner++) {
            int wanted = corner;
            moments[corner] = IntStream.range(0, lap.size())
                    .filter(k -> lap.corner()[k] == wanted && lap.phase()[k] >= 1)
                    .toArray();
        }
        return moments;
    }

    private static double[] top(LapRun run, DrivenLap lap, int[] moments) {
        double[] own = new double[moments.length];
        int count = 0;
        boolean flat = true;
        for (int k : moments) {
            double use = run.use(k);
            if (Double.isFinite(use)) {
                own[count++] = use;
                flat &= lap.moments().get(k).throttle() > FULL_THROTTLE;
            }
        }
        return count < 6 || flat ? new double[0] : new double[] {Robust.quantile(Arrays.copyOf(own, count), TOP_SHARE)};
    }

    private static double[] join(double[] one, double[] other) {
        double[] out = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, out, one.length, other.length);
        return out;
    }

    private static List<double[]> straights(List<DrivenLap> laps) {
        List<List<Double>> bins = new ArrayList<>();
        List<List<Double>> speeds = new ArrayList<>();
        for (int b = 0; b < 30; b++) {
            bins.add(new ArrayList<>());
            speeds.add(new ArrayList<>());
        }
        for (DrivenLap lap : laps) {
            for (int k = 0; k < lap.size(); k++) {
                Moment moment = lap.moments().get(k);
                int bin = (int) (moment.speed() / BIN_MPS);
                if (moment.throttle() > FULL_THROTTLE
                        && Math.abs(moment.lateral()) < STRAIGHT_MPS2
                        && moment.speed() > SLOWEST_MPS
                        && bin < bins.size()) {
                    bins.get(bin).add(moment.forward());
                    speeds.get(bin).add(moment.speed());
                }
            }
        }
        List<double[]> out = new ArrayList<>();
        for (int b = 0; b < bins.size(); b++) {
            if (bins.get(b).size() >= LEAST_IN_BIN) {
                double[] a =
                        bins.get(b).stream().mapToDouble(Double::doubleValue).toArray();
                double[] v =
                        speeds.get(b).stream().mapToDouble(Double::doubleValue).toArray();
                out.add(new double[] {Robust.median(v), Robust.median(a), a.length});
            }
        }
        return out;
    }
}
