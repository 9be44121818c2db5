package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.simulation.fault.BalancedTruth;

final class CaseDrawTest {

    private static BenchCase draw(long seed, int number) {
        return CaseDraw.draw(seed, number, Optional.empty());
    }

    @Test
    void aCaseFollowsFromSeedAndNumberAlone() {
        BenchCase first = draw(3L, 5);
        BenchCase again = draw(3L, 5);
        assertThat(again.name()).isEqualTo(first.name());
        assertThat(again.changes()).isEqualTo(first.changes());
        assertThat(again.parameters()).containsExactly(first.parameters());
        assertThat(again.style()).isEqualTo(first.style());
        assertThat(again.logger()).isEqualTo(first.logger());
        assertThat(again.csv()).isEqualTo(first.csv());
        assertThat(again.driverSeed()).isEqualTo(first.driverSeed());
        assertThat(again.circuit().elements()).isEqualTo(first.circuit().elements());
        assertThat(draw(4L, 5).parameters()).isNotEqualTo(first.parameters());
    }

    @Test
    void casesAreWhatTheyAreSaidToBe() {
        List<BenchCase> cases =
                IntStream.range(0, 12).mapToObj(i -> draw(11L, i)).toList();
        assertThat(cases).allSatisfy(drawn -> {
            assertThat(drawn.changes().isEmpty()).isEqualTo(drawn.kind() != Kind.SETUP);
            assertThat(drawn.style().equals(drawn.cured()))
                    .isEqualTo(drawn.kind().ofTheCar() || drawn.kind() == Kind.BALANCED);
            assertThat(drawn.logger().rateHz()).isBetween(50.0, 250.0);
            assertThat(drawn.flying()).isBetween(6, 12);
            assertThat(Arrays.equals(drawn.parameters(), drawn.balanced())).isEqualTo(drawn.kind() != Kind.UNSEEN);
            assertThat(BalancedTruth.measure(drawn.car().sheet(), drawn.balanced())
                            .isBalanced())
                    .isTrue();
        });
    }

    @Test
    void aFaultThatNoSheetShowsUnbalancesTheCar() {
        for (int i = 0; i < 4; i++) {
            BenchCase drawn = CaseDraw.draw(11L, i, Optional.of("unseen"));
            assertThat(drawn.changes()).isEmpty();
            assertThat(BalancedTruth.measure(drawn.car().sheet(), drawn.parameters())
                            .isBalanced())
                    .as(drawn.name())
                    .isFalse();
        }
    }

    @Test
    void aFaultCanBeAskedFor() {
        BenchCase drawn = CaseDraw.draw(1L, 0, Optional.of("front bar too stiff"));
        assertThat(drawn.fault()).isEqualTo("front bar too stiff");
        assertThat(drawn.changes()).anySatisfy(change -> {
            assertThat(change.item()).isEqualTo("front_bar");
            assertThat(change.to()).isGreaterThan(change.from());
        });
        assertThatThrownBy(() -> CaseDraw.draw(1L, 0, Optional.of("square wheels")))
                .hasMessageContaining("square wheels")
                .hasMessageContaining("front bar too stiff");
    }
}
