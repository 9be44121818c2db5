package setwright.core.simulation.driver;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driver.SpeedPlan.Trust;

/** What a driver means to do in one lap: his plan, moved here and there because nobody is a machine. */
final class LapIntent {
    private static final double MOST_DEVIATIONS = 2.2;

    private final ReferenceLine line;
    private final SpeedPlan plan;
    private final double[] offset;
    private final double[] shift;

    private LapIntent(ReferenceLine line, SpeedPlan plan, double[] offset, double[] shift) {
        this.line = line;
        this.plan = plan;
        this.offset = offset;
        this.shift = shift;
    }

    /**
     * Makes up a lap.
     *
     * @param trust    learned so far, one value for each corner
     * @param pace     factor on all trust, less than 1 on cool tyres
     * @param random   of the scatter
     */
    static LapIntent of(
            ReferenceLine line,
            List<Corner> corners,
            CarFeel feel,
            DriverStyle style,
            CornerTrust trust,
            double pace,
            Random random) {
        int n = line.nodeCount();
        Trust at = new Trust(new double[n], new double[n], new double[n]);
        Arrays.fill(at.entry(), pace);
        Arrays.fill(at.middle(), pace);
        Arrays.fill(at.exit(), pace);
        double[] offset = new double[n];
        double[] shift = new double[n];
        DriverScatter scatter = style.scatter();
        double lap = 1.0 + scatter.lapPace() * gauss(random);
        for (int c = 0; c < corners.size(); c++) {
            Corner corner = corners.get(c);
            double speedier = lap * lap * Math.pow(1.0 + scatter.pace() * gauss(random), 2);
            double deeper = 1.0 + scatter.trail() * gauss(random);
            double later = scatter.brakePointM() * gauss(random);
            double aside = scatter.lineM() * gauss(random);
            double pickUp = -style.pickUpEarlyM() + scatter.pickUpM() * gauss(random);
            int first = (int) Math.floor(corner.startM() / line.stepM());
            int last = (int) Math.ceil(corner.endM() / line.stepM());
            for (int k = first; k <= last; k++) {
                int i = Math.floorMod(k, n);
                double s = k * line.stepM();
                at.middle()[i] = pace * trust.middle(c) * speedier;
                at.entry()[i] = pace * trust.entry(c) * deeper;
                at.exit()[i] = pace * trust.exit(c);
                offset[i] = aside * hump(s, corner.startM(), corner.apexM(), corner.endM());
                // braking later and then harder: the plan is met again soon after turn-in
                shift[i] = s < corner.apexM()
                        ? later * fade(s, corner.startM(), 0.7 * corner.turnInM() + 0.3 * corner.apexM())
                        : pickUp
                                * (1.0 - fade(s, corner.apexM(), corner.turnOutM()))
                                * fade(s, corner.turnOutM(), corner.endM());
            }
        }
        return new LapIntent(line, new SpeedPlan(line, feel, style, at), offset, shift);
    }

    /** A driver who is far off notices before it is too late. */
    private static double gauss(Random random) {
        return Math.max(-MOST_DEVIATIONS, Math.min(random.nextGaussian(), MOST_DEVIATIONS));
    }

    /** 1 before, 0 after, smooth between. */
    private static double fade(double s, double from, double to) {
        if (s <= from) {
            return 1.0;
        }
        return s >= to ? 0.0 : 0.5 + 0.5 * Math.cos(Math.PI * (s - from) / (to - from));
    }

    private static double hump(double s, double from, double top, double to) {
        return s <= top ? 1.0 - fade(s, from, top) : fade(s, top, to);
    }

    /** Returns the offset of the line meant at each node, m, left positive. */
    double[] offsets() {
        return offset;
    }

    /** Returns the speed meant at a station, m/s. */
    double speedAt(double stationM) {
        return plan.speedAt(stationM - shiftAt(stationM));
    }

    /** Returns the acceleration meant at a station, m/s². */
    double accelerationAt(double stationM) {
        return plan.accelerationAt(stationM - shiftAt(stationM));
    }

    private double shiftAt(double stationM) {
        return shift[(int) (line.wrap(stationM) / line.stepM()) % shift.length];
    }
}
