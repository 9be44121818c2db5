package setwright.core.baseline;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import setwright.core.car.BalancedCar;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/*
 * Design note. A car that comes along at another speed, or with another foot on its pedals, shows another balance though nothing is
 * wrong with it. What the baseline showed is one answer to what a sound car would show now; the other moves it by as much as the
 * balanced car's own balance moves from that motion to this. On 48 faulty cars of the truth bench's tuning seed both are equally near to what
 * the fault itself does (0.11 degrees rms on entry, 0.15 mid-corner, 0.11 to 0.12 on exit), and where the car is driven as it was they
 * are the same. So half way is taken, and the other half is doubt.
 */

/** A stint of the same car in good order. */
public final class Baseline {
    /** Fewer laps leave no scatter to speak of. */
    public static final int FEWEST_LAPS = 3;

    private static final double HALF_WAY = 0.5;

    private final String name;
    private final CarSheet sheet;
    private final Circuit circuit;
    private final BalancedCar car;
    private final RoadBalance shown;
    private final RoadBalance reckoned;
    private final List<Double> lapsS;
    private final List<CornerPass> passes;

    private Baseline(String name, CarSheet sheet, Stint stint, HandlingTrace trace) {
        this.name = name;
        this.sheet = sheet;
        this.circuit = stint.circuit();
        this.car = trace.car();
        this.shown = RoadBalance.of(stint, trace, trace.balance());
        this.reckoned = RoadBalance.of(stint, trace, trace.reference());
        this.lapsS = stint.goodLaps().stream().map(Lap::timeS).toList();
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
            double then = side * shown.at(station).orElse(Double.NaN);
            double moved =
                    trace.reference().get(i) - side * reckoned.at(station).orElse(Double.NaN);
            reference[i] = then + HALF_WAY * moved;
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
                    balance.against(over(shown, balance, side) + HALF_WAY * moved, (1.0 - HALF_WAY) * Math.abs(moved)));
        });
        return pass.with(phases);
    }

    private static double over(RoadBalance road, PhaseBalance balance, double side) {
        double[] laps = road.over(balance.fromM(), balance.toM(), side);
        return laps.length < FEWEST_LAPS ? Double.NaN : side * Robust.median(laps);
    }
}
