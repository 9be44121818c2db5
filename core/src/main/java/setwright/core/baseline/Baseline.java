package setwright.core.baseline;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import setwright.core.car.BalancedCar;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.CornerTimes;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.recording.Channel;

/*
 * Design note. A car that comes along at another speed, or with another foot on its pedals, shows another balance though nothing is
 * wrong with it, and how much it would is known: by as much as the balanced car's own balance moves from that motion to this. But what a
 * fault makes the driver do belongs to the fault. On 48 faulty cars of two tuning seeds of the truth bench it is 0.05 to 0.1 degrees, what
 * another mood does to balanced ones 0.015; the plain difference is nearest to what the fault does (rms of a corner 0.06 to 0.07 degrees on
 * entry, 0.13 to 0.15 mid-corner, 0.05 to 0.07 on exit; with half of the motion's share taken off 0.07 to 0.08, 0.13 to 0.16, 0.06 to 0.09).
 * So what came with the driving counts, but no more of it than faults bring about (below 0.15 degrees in 95 % of those corners, and nearly as
 * near to what the fault does): a day at quite another pace does more. Half of what another motion may do is doubt.
 */

/** A stint of the same car in good order. */
public final class Baseline {
    /** Fewer laps leave no scatter to speak of. */
    public static final int FEWEST_LAPS = 3;

    /** Share of what another motion does to a balanced car that the baseline may be off by. */
    private static final double OTHERWISE = 0.5;
    /** What faults make a driver do moves a sound car's balance by less in 95 of 100 corners, rad; what is beyond is another pace. */
    public static final double MADE_BY_FAULTS_RAD = Math.toRadians(0.15);

    private final String name;
    private final CarSheet sheet;
    private final Circuit circuit;
    private final BalancedCar car;
    private final RoadBalance shown;
    private final RoadBalance reckoned;
    private final List<Double> lapsS;
    private final Map<Integer, List<Double>> cornersS;
    private final List<Double> fuelKg;
    private final List<CornerPass> passes;

    private Baseline(String name, CarSheet sheet, Stint stint, HandlingTrace trace) {
        this.name = name;
        this.sheet = sheet;
        this.circuit = stint.circuit();
        this.car = trace.car();
        this.shown = RoadBalance.of(stint, trace, trace.balance());
        this.reckoned = RoadBalance.of(stint, trace, trace.reference());
        this.lapsS = stint.goodLaps().stream().map(Lap::timeS).toList();
        this.fuelKg = stint.fuelKg();
        this.cornersS = Map.copyOf(CornerTimes.of(stint));
        this.passes = CornerPasses.of(stint, trace, sheet);
    }

    /**
     * Makes a baseline.
     *
     * @param name   as people call it
     * @param stint  on the circuit of the stints to come
     * @param sheet  as driven then
     */
    public static Baseline of(String name, Stint stint, CarSheet sheet) {
        return new Baseline(name, sheet, stint, HandlingTracer.trace(stint, sheet));
    }

    /** Returns its name. */
    public String name() {
        return name;
    }

    /** Returns the sheet that it was driven with. */
    public CarSheet sheet() {
        return sheet;
    }

    /** Returns its passes through the corners. */
    public List<CornerPass> passes() {
        return passes;
    }

    /** Returns the times of its laps, s. */
    public List<Double> lapsS() {
        return lapsS;
    }

    /** Returns the fuel on board in its laps as far as it was recorded, kg. */
    public List<Double> fuelKg() {
        return fuelKg;
    }

    /** Returns what each corner took with the straight after it, s. */
    public Map<Integer, List<Double>> cornersS() {
        return cornersS;
    }

    /** Returns the trace with what the baseline's car would show in the same motion, were it balanced, as its reference. */
    public HandlingTrace reckoned(HandlingTrace trace) {
        return trace.against(car);
    }

    /** Returns the passes with what the baseline leads to expect over the same stretches of road as their reference. */
    public List<CornerPass> held(List<CornerPass> passes) {
        return held(passes, Set.of());
    }

    /**
     * The same for a driver who is known to ask for more than then.
     *
     * @param passes  of a reckoned trace
     * @param his     phases in which he does: what comes of it is the question there, so that all of the difference counts
     */
    public List<CornerPass> held(List<CornerPass> passes, Set<Phase> his) {
        return passes.stream().map(pass -> held(pass, his)).toList();
    }

    /**
     * Returns the trace with what the baseline leads to expect at the same places as its reference.
     *
     * @param trace  a reckoned one
     */
    public HandlingTrace held(Stint stint, HandlingTrace trace) {
        double[] reference = new double[stint.recording().sampleCount()];
        for (int i = 0; i < reference.length; i++) {
            double side = Math.signum(trace.lateral().get(i));
            double station = stint.station().get(i);
            double moved =
                    trace.reference().get(i) - side * reckoned.at(station).orElse(Double.NaN);
            reference[i] = side * shown.at(station).orElse(Double.NaN) + byAnotherPace(moved);
        }
        return trace.against(Channel.of(reference));
    }

    private CornerPass held(CornerPass pass, Set<Phase> his) {
        double side = circuit.corners().stream()
                .filter(found -> found.number() == pass.corner())
                .mapToDouble(Corner::sign)
                .findFirst()
                .orElse(Double.NaN);
        Map<Phase, PhaseBalance> phases = new EnumMap<>(Phase.class);
        pass.phases().forEach((phase, balance) -> {
            double moved = his.contains(phase) ? 0.0 : balance.referenceRad() - over(reckoned, balance, side);
            phases.put(
                    phase,
                    balance.against(over(shown, balance, side) + byAnotherPace(moved), OTHERWISE * Math.abs(moved)));
        });
        return pass.with(phases);
    }

    /** The part of what another motion does to a sound car that a fault would hardly have brought about. */
    private static double byAnotherPace(double movedRad) {
        return movedRad - Math.max(-MADE_BY_FAULTS_RAD, Math.min(movedRad, MADE_BY_FAULTS_RAD));
    }

    private static double over(RoadBalance road, PhaseBalance balance, double side) {
        double[] laps = road.over(balance.fromM(), balance.toM(), side);
        return laps.length < FEWEST_LAPS
                ? Double.NaN
                : side * Arrays.stream(laps).average().orElse(Double.NaN);
    }
}
