package setwright.core.baseline;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** A stint of the same car in good order. */
public final class Baseline {
    /** Fewer laps leave no scatter to speak of. */
    public static final int FEWEST_LAPS = 3;

    private final String name;
    private final CarSheet sheet;
    private final Circuit circuit;
    private final RoadBalance road;
    private final List<Double> lapsS;

    private Baseline(String name, CarSheet sheet, Circuit circuit, RoadBalance road, List<Double> lapsS) {
        this.name = name;
        this.sheet = sheet;
        this.circuit = circuit;
        this.road = road;
        this.lapsS = List.copyOf(lapsS);
    }

    /**
     * Makes a baseline.
     *
     * @param name   as people call it
     * @param stint  on the circuit of the stints to come
     * @param sheet  as driven then
     */
    public static Baseline of(String name, Stint stint, CarSheet sheet) {
        return new Baseline(
                name,
                sheet,
                stint.circuit(),
                RoadBalance.of(stint, HandlingTracer.trace(stint, sheet)),
                stint.goodLaps().stream().map(Lap::timeS).toList());
    }

    /** Returns its name. */
    public String name() {
        return name;
    }

    /** Returns the sheet that it was driven with. */
    public CarSheet sheet() {
        return sheet;
    }

    /** Returns the times of its laps, s. */
    public List<Double> lapsS() {
        return lapsS;
    }

    /** Returns the passes with what the baseline showed over the same stretches of road as their reference. */
    public List<CornerPass> held(List<CornerPass> passes) {
        return passes.stream().map(this::held).toList();
    }

    /** Returns the trace with what the baseline showed at the same places as its reference. */
    public HandlingTrace held(Stint stint, HandlingTrace trace) {
        double[] reference = new double[stint.recording().sampleCount()];
        for (int i = 0; i < reference.length; i++) {
            reference[i] = Math.signum(trace.lateral().get(i))
                    * road.at(stint.station().get(i)).orElse(Double.NaN);
        }
        return trace.against(Channel.of(reference));
    }

    private CornerPass held(CornerPass pass) {
        Map<Phase, PhaseBalance> phases = new EnumMap<>(Phase.class);
        pass.phases().forEach((phase, balance) -> phases.put(phase, balance.against(shown(pass.corner(), balance))));
        return pass.with(phases);
    }

    private double shown(int corner, PhaseBalance balance) {
        double side = circuit.corners().stream()
                .filter(found -> found.number() == corner)
                .mapToDouble(Corner::sign)
                .findFirst()
                .orElse(Double.NaN);
        double[] laps = road.over(balance.fromM(), balance.toM(), side);
        return laps.length < FEWEST_LAPS ? Double.NaN : side * Robust.median(laps);
    }
}
