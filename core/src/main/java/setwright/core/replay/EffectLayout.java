package setwright.core.replay;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.numerics.Robust;

/**
 * Where effects are collected: in each corner and phase, in each phase over the corners of a speed class, and along the lap.
 *
 * @param speedClasses  of the corners, in driving order
 * @param pools         phase and class of each pooled effect
 * @param bins          of the lap plot
 */
record EffectLayout(List<SpeedClass> speedClasses, List<Pool> pools, int bins) {
    static final double BIN_M = 10.0;
    static final int PHASES = DrivenLap.PHASES;

    /** Returns the place of a phase among all. */
    @SuppressWarnings("EnumOrdinal") // the one place where order and arrays meet
    static int index(Phase phase) {
        return phase.ordinal();
    }

    static EffectLayout of(Stint stint, List<CornerPass> passes) {
        List<SpeedClass> classes = new ArrayList<>();
        for (Corner corner : stint.circuit().corners()) {
            double lowest = Robust.median(passes.stream()
                    .filter(pass -> pass.corner() == corner.number())
                    .mapToDouble(CornerPass::lowestSpeedMps)
                    .toArray());
            classes.add(SpeedClass.of(lowest));
        }
        List<Pool> pools = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            pools.add(Pool.all(phase));
            for (SpeedClass speedClass : SpeedClass.values()) {
                if (classes.contains(speedClass)) {
                    pools.add(Pool.of(phase, speedClass));
                }
            }
        }
        int bins = (int) Math.max(1, Math.round(stint.circuit().line().lengthM() / BIN_M));
        return new EffectLayout(List.copyOf(classes), List.copyOf(pools), bins);
    }

    /** Returns the bin of a station, or -1 when it is unknown. */
    int bin(double station, double lengthM) {
        return Double.isNaN(station) ? -1 : (int) Math.min(bins - 1.0, Math.max(0.0, station / lengthM * bins));
    }
}
