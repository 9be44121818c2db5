package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;
import setwright.core.simulation.truth.TrueProblem;
import setwright.core.simulation.truth.TrueTrigger;

final class CaseTruthTest {
    @ParameterizedTest
    @CsvSource({
        "SPEED, HIGH, SPEED",
        "SPEED, ALL, STEADY",
        "SPEED, LOW, STEADY",
        "STEADY, HIGH, STEADY",
        "ENTRY_SPEED, ALL, ENTRY_SPEED",
        "THROTTLE, LOW, THROTTLE"
    })
    void wingsAreAskedForWhereTheFastCornersShowThem(TrueTrigger mechanism, SpeedRange shown, TrueTrigger named) {
        TrueProblem problem = new TrueProblem(
                Phase.MID,
                shown,
                BalanceSign.UNDERSTEER,
                Set.of(Phase.MID),
                Set.of(shown),
                0.01,
                0.001,
                false,
                List.of(1, 2));
        assertThat(CaseTruth.named(mechanism, Optional.of(problem))).isEqualTo(named);
        assertThat(CaseTruth.named(TrueTrigger.NONE, Optional.empty())).isEqualTo(TrueTrigger.NONE);
    }
}
