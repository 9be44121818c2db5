package setwright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.example.Example;
import setwright.core.trial.TrialTarget;

final class DemoStintTest {
    private static final TrialTarget TARGET =
            TrialTarget.of(Example.answer().diagnosis()).orElseThrow();

    /** What the drawing shows is what the trial compares: where the car stands among these laps, not against a car reckoned anew each time. */
    @Test
    void theBalanceIsThatAmongTheLapsOfAllStints() {
        DemoStint stint = new DemoStint("before", Example.answer());
        List<List<Double>> balance =
                DemoStint.balanceDeg(List.of(stint, new DemoStint("again", Example.answer())), TARGET);

        assertThat(balance).hasSize(2);
        assertThat(balance.get(0)).hasSameSizeAs(stint.lapTimesS()).isEqualTo(balance.get(1));
        assertThat(balance.get(0).stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .isCloseTo(0.0, within(0.02));
    }
}
