package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.Robust;

/*
 * Design note. High steering activity alone is no fault: fast drivers show more of it (van Leeuwen and others, PLoS ONE 12,
 * e0186871, 2017). So the yardstick is this driver's own: the reversals per second of all his passes.
 */

/** Marks the passes in which the hands reverse far more often than this driver's do elsewhere. */
final class SawingFinder {
    /** Robust standard deviations above the driver's own median; one pass in a thousand by chance, when normal. */
    private static final double ABOVE = 3.0;
    /** Fewer extra reversals per second than this are a matter of counting. */
    private static final double LEAST_SPREAD_PER_S = 0.3;

    private SawingFinder() {}

    static List<CornerPass> mark(List<CornerPass> passes) {
        double[] rates = passes.stream()
                .mapToDouble(pass -> pass.habits().reversalsPerS())
                .toArray();
        double usual = Robust.median(rates) + ABOVE * Math.max(Robust.scaledMad(rates), LEAST_SPREAD_PER_S);
        return passes.stream()
                .map(pass -> pass.habits().reversalsPerS() > usual ? sawing(pass) : pass)
                .toList();
    }

    private static CornerPass sawing(CornerPass pass) {
        List<HandsEvent> hands = new ArrayList<>(pass.hands());
        double from = pass.events().turnIn().orElse(Double.NaN);
        double seconds = pass.phases().values().stream()
                .filter(phase -> phase.phase() != Phase.BRAKING)
                .mapToDouble(PhaseBalance::timeS)
                .sum();
        hands.add(new HandsEvent(
                HandsEvent.Kind.SAWING,
                Phase.ENTRY,
                from,
                pass.turnInTimeS(),
                seconds,
                pass.habits().sawingRad()));
        return pass.with(hands);
    }
}
