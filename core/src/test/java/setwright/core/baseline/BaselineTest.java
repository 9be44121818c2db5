package setwright.core.baseline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Drive;
import setwright.core.numerics.Robust;

/** What a stint shows against another of the same car. */
final class BaselineTest {
    private static final double PUSH = Math.toRadians(0.5);
    /** A twentieth of what a typical setup change does. */
    private static final double CLOSE = Math.toRadians(0.03);

    private static List<CornerPass> passes(Stint stint) {
        HandlingTrace trace = HandlingTracer.trace(stint, Drive.sheet());
        return CornerPasses.of(stint, trace, Drive.sheet());
    }

    private static double excess(List<CornerPass> passes, Phase phase) {
        return Robust.median(passes.stream()
                .flatMap(pass -> pass.phase(phase).stream())
                .mapToDouble(balance -> balance.excessRad())
                .filter(Double::isFinite)
                .toArray());
    }

    @Test
    void aStintDiffersFromItselfByNothing() {
        Stint stint = new Drive(3L).stint();
        List<CornerPass> held = Baseline.of("itself", stint, Drive.sheet()).held(passes(stint));
        for (Phase phase : List.of(Phase.ENTRY, Phase.MID, Phase.EXIT)) {
            assertThat(excess(held, phase)).as(phase.words()).isEqualTo(0.0, within(CLOSE));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whatTheFrontSlipsMoreIsMeasured(long seed) {
        Baseline good = Baseline.of("good", new Drive(seed).stint(), Drive.sheet());
        List<CornerPass> held = good.held(
                passes(new Drive(seed + 100L).pushes(PUSH, corner -> true).stint()));
        assertThat(excess(held, Phase.MID)).isEqualTo(PUSH, within(0.2 * PUSH));
    }

    /** Another motion, in which a balanced car would show so much more: as much as faults bring about counts, what is beyond does not. */
    @ParameterizedTest
    @CsvSource({"0.1, 0", "-0.1, 0", "0.5, 0.35", "-0.5, -0.35"})
    void whatCameWithTheDrivingCountsUpToWhatFaultsBringAbout(double movedDeg, double allowedDeg) {
        Stint stint = new Drive(5L).stint();
        Baseline itself = Baseline.of("itself", stint, Drive.sheet());
        List<CornerPass> before = passes(stint);
        double moved = Math.toRadians(movedDeg);
        List<CornerPass> other = itself.held(before.stream()
                .map(pass -> {
                    Map<Phase, PhaseBalance> phases = new EnumMap<>(pass.phases());
                    phases.replaceAll((phase, balance) -> balance.against(balance.referenceRad() + moved, 0.0));
                    return pass.with(phases);
                })
                .toList());
        assertThat(excess(itself.held(before), Phase.MID) - excess(other, Phase.MID))
                .isEqualTo(Math.toRadians(allowedDeg), within(CLOSE));
        assertThat(other.get(0).phase(Phase.MID).orElseThrow().referenceDoubtRad())
                .isEqualTo(0.5 * Math.abs(moved), within(CLOSE));
    }

    @Test
    void onlyTheReferenceChanges() {
        Stint stint = new Drive(5L).stint();
        List<CornerPass> before = passes(stint);
        List<CornerPass> held =
                Baseline.of("good", new Drive(6L).stint(), Drive.sheet()).held(before);
        assertThat(held).hasSameSizeAs(before);
        for (int i = 0; i < held.size(); i++) {
            CornerPass one = held.get(i);
            CornerPass other = before.get(i);
            assertThat(one.with(other.phases())).isEqualTo(other);
        }
    }

    @Test
    void theTraceShowsTheBaselineAtTheSamePlaces() {
        Stint stint = new Drive(7L).stint();
        HandlingTrace trace = HandlingTracer.trace(stint, Drive.sheet());
        HandlingTrace held = Baseline.of("itself", stint, Drive.sheet()).held(stint, trace);
        double[] apart = new double[stint.recording().sampleCount()];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = Math.abs(trace.lateral().get(i)) > 5.0
                    ? held.reference().get(i) - trace.balance().get(i)
                    : Double.NaN;
        }
        double[] known = Robust.finite(apart);
        assertThat(known.length).isGreaterThan(500);
        assertThat(Robust.median(known)).isEqualTo(0.0, within(CLOSE));
        assertThat(Robust.scaledMad(known)).isLessThan(Math.toRadians(0.2));
    }

    @Test
    void tooFewLapsLeaveNoReference() {
        Stint stint = new Drive(8L).stint();
        Baseline two = Baseline.of("two laps", new Drive(9L).laps(2).stint(), Drive.sheet());
        assertThat(excess(two.held(passes(stint)), Phase.MID)).isNaN();
    }
}
