package setwright.core.judgement;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/** Tells which speeds a set of corners stands for: those it covers, when corners of the other end stay quiet. */
final class SpeedRanges {
    private SpeedRanges() {}

    static SpeedRange of(List<CornerPass> passes, Set<Integer> corners, Phase phase) {
        Set<SpeedClass> shown = classes(passes, corners, phase, true);
        Set<SpeedClass> quiet = classes(passes, corners, phase, false);
        boolean low = shown.contains(SpeedClass.LOW);
        boolean high = shown.contains(SpeedClass.HIGH);
        if (!high && quiet.contains(SpeedClass.HIGH)) {
            return SpeedRange.LOW;
        }
        if (!low && high && quiet.contains(SpeedClass.LOW)) {
            return SpeedRange.HIGH;
        }
        return SpeedRange.ALL;
    }

    private static Set<SpeedClass> classes(
            List<CornerPass> passes, Set<Integer> corners, Phase phase, boolean showing) {
        return passes.stream()
                .filter(pass -> pass.phase(phase).isPresent() && corners.contains(pass.corner()) == showing)
                .map(CornerPass::speedClass)
                .collect(Collectors.toSet());
    }
}
