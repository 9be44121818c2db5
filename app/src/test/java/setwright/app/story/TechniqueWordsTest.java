package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.DrivingFault;
import setwright.core.technique.FirstStep;
import setwright.core.technique.Lever;
import setwright.core.technique.TechniqueLever;
import setwright.core.technique.TechniqueLever.AtCorner;
import setwright.core.technique.TechniqueLever.Effect;
import setwright.core.technique.TechniqueLever.Response;

final class TechniqueWordsTest {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);

    private static TechniqueLever lever(Optional<Effect> effect, boolean varies) {
        return lever(effect, varies, 0.12, Optional.empty());
    }

    private static TechniqueLever lever(
            Optional<Effect> effect, boolean varies, double move, Optional<FirstStep> firstStep) {
        return new TechniqueLever(
                0,
                Optional.empty(),
                Optional.of(
                        new DrivingFault("throttle picked up, then lifted", List.of(3), 0.8, 0.3, "share of throttle")),
                Lever.PICK_UP,
                move,
                Response.LIFT,
                firstStep,
                effect,
                List.of(new AtCorner(3, 1.4, 1.52, Optional.empty())),
                List.of(4, 7),
                List.of(2),
                0.01,
                0.87,
                effect.isEmpty(),
                varies);
    }

    private static String told(TechniqueLever lever) {
        return TechniqueWords.tell(List.of(lever), METRIC).get(0).replace(Figures.KEPT_TOGETHER, ' ');
    }

    @Test
    void aProvedLeverHasItsSizeEffectAndLaps() {
        assertThat(told(lever(Optional.of(new Effect(-0.2, -0.3, -0.1)), true)))
                .isEqualTo("Pick the throttle up later, by 0.12 s in corner 3: against throttle picked up, then lifted."
                        + " By your own laps that saves closing the throttle again by 20 % (10 to 30) of its travel"
                        + " (strength 0.87). You do it already on laps 4 and 7, least on lap 2.");
    }

    /** What the laps do not prove is told as a direction, without a size to keep to. */
    @Test
    void aWeakLeverSaysSoAndWhy() {
        assertThat(told(lever(Optional.empty(), false)))
                .startsWith("Pick the throttle up later in corner 3")
                .contains("Weak: you hardly vary it");
        assertThat(told(lever(Optional.empty(), true))).contains("too small to feel", "better quarter it is 0.12 s");
    }

    /** A hundredth of a second is nothing to begin with. */
    @Test
    void whoDoesTheSameOnEveryLapIsToVaryIt() {
        assertThat(told(lever(Optional.empty(), true, 0.01, Optional.empty())))
                .contains("Vary it on purpose")
                .doesNotContain("0.01");
    }

    @Test
    void aFaultThatTellsTheSizeGivesTheFirstStep() {
        assertThat(told(lever(
                        Optional.empty(), true, 0.01, Optional.of(new FirstStep(FirstStep.Of.PICK_UP, 0.0, 0.43)))))
                .contains("Some 0.4 s later is half way")
                .doesNotContain("0.01");
        assertThat(told(lever(
                        Optional.empty(),
                        true,
                        -1.0,
                        Optional.of(new FirstStep(FirstStep.Of.BRAKE_BESIDE_CORNERING, 0.76, 0.61)))))
                .contains("When you corner with 70 % of your most you still brake with 76 % of your hardest")
                .contains("leaves some 61 % there");
    }
}
