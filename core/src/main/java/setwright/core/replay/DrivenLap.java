package setwright.core.replay;

import java.util.ArrayList;
import java.util.List;
import setwright.core.car.model.Moment;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;

/**
 * One lap as a replay needs it: moments at an even step, each with its place in the evidence table.
 *
 * @param number    lap number
 * @param stepS     time between moments, s
 * @param moments   in driving order
 * @param station   of each moment, m along the reference line
 * @param corner    for each moment, index of the corner in whose stretch it lies: from its approach to the next one's
 * @param phase     for each moment, index of the phase, or -1 outside
 * @param balance   measured balance angle of each moment, rad; NaN where unknown
 */
@SuppressWarnings("ArrayRecordComponent") // never changed after it is built; replays read them millions of times
public record DrivenLap(
        int number, double stepS, List<Moment> moments, double[] station, int[] corner, int[] phase, double[] balance) {
    /** A car's body follows up to a few hertz; 25 Hz catch it and keep 200 draws affordable. */
    private static final double RATE_HZ = 25.0;

    /** Share of the limit below which no setup change shows in the balance angle, and what is left is noise. */
    private static final double LEAST_LATERAL_USE = 0.1;

    /** How many phases there are. */
    public static final int PHASES = Phase.values().length;

    /** Returns the lateral acceleration below which balance is left out, m/s². */
    public static double leastLateral(HandlingTrace trace) {
        return LEAST_LATERAL_USE * trace.car().grip().at(0.0);
    }

    /** Returns the good laps without gaps. */
    public static List<DrivenLap> of(Stint stint, HandlingTrace trace, List<CornerPass> passes) {
        double step = stint.recording().stepS();
        int stride = (int) Math.max(1, Math.round(1.0 / (RATE_HZ * step)));
        return stint.goodLaps().parallelStream()
                .map(lap -> of(
                        stint,
                        trace,
                        passes.stream()
                                .filter(pass -> pass.lap() == lap.number())
                                .toList(),
                        lap,
                        stride))
                .filter(driven -> driven.moments.stream().allMatch(DrivenLap::whole))
                .toList();
    }

    private static DrivenLap of(Stint stint, HandlingTrace trace, List<CornerPass> passes, Lap lap, int stride) {
        int count = (lap.to() - lap.from() + stride - 1) / stride;
        List<Moment> moments = new ArrayList<>(count);
        double[] station = new double[count];
        int[] corner = new int[count];
        int[] phase = new int[count];
        double[] balance = new double[count];
        double length = stint.circuit().line().lengthM();
        List<Corner> corners = stint.circuit().corners();
        List<PhaseBalance> phases =
                passes.stream().flatMap(pass -> pass.phases().values().stream()).toList();
        for (int k = 0; k < count; k++) {
            int i = lap.from() + k * stride;
            moments.add(new Moment(
                    trace.speed().get(i),
                    trace.forward().get(i),
                    trace.lateral().get(i),
                    trace.yawRate().get(i),
                    trace.yawAcceleration().get(i),
                    trace.steer().get(i),
                    trace.throttle().get(i),
                    trace.brake().get(i)));
            station[k] = stint.station().get(i);
            corner[k] = stretch(corners, station[k], length);
            phase[k] = phase(phases, station[k], length);
            balance[k] = trace.balance().get(i);
        }
        return new DrivenLap(
                lap.number(), stride * stint.recording().stepS(), moments, station, corner, phase, balance);
    }

    private static boolean whole(Moment moment) {
        return Double.isFinite(moment.speed())
                && Double.isFinite(moment.forward())
                && Double.isFinite(moment.lateral())
                && Double.isFinite(moment.yawRate())
                && Double.isFinite(moment.yawAcceleration())
                && Double.isFinite(moment.steer());
    }

    /** The last corner whose approach has begun; before the first one's, the last corner of the lap. */
    private static int stretch(List<Corner> corners, double station, double length) {
        int found = corners.size() - 1;
        double nearest = Double.POSITIVE_INFINITY;
        for (int c = 0; c < corners.size(); c++) {
            double since = ahead(corners.get(c).startM(), station, length);
            if (since < nearest) {
                nearest = since;
                found = c;
            }
        }
        return found;
    }

    private static int phase(List<PhaseBalance> phases, double station, double length) {
        for (PhaseBalance balance : phases) {
            if (ahead(balance.fromM(), station, length) < balance.toM() - balance.fromM()) {
                return EffectLayout.index(balance.phase());
            }
        }
        return -1;
    }

    /** How far a place lies ahead of another, m, 0 to a lap; either may be counted on past the line. A remainder would take ten times as long. */
    private static double ahead(double from, double to, double length) {
        double away = to - from;
        while (away < 0.0) {
            away += length;
        }
        while (away >= length) {
            away -= length;
        }
        return away;
    }

    /** Returns how many moments there are. */
    public int size() {
        return moments.size();
    }
}
