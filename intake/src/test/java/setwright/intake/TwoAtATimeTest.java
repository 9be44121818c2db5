package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TwoAtATimeTest {

    @Test
    void whatComesOfThemIsInTheirOrderAndNoMoreThanTwoAreUnderWay() {
        AtomicInteger underWay = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<Integer> done = TwoAtATime.each(20, i -> {
            most.accumulateAndGet(underWay.incrementAndGet(), Math::max);
            Thread.yield();
            underWay.decrementAndGet();
            return i * i;
        });
        assertThat(done)
                .isEqualTo(IntStream.range(0, 20).map(i -> i * i).boxed().toList());
        assertThat(most.get()).isBetween(1, 2);
    }

    @Test
    void oneMayWaitForAnEarlierOne() {
        List<CompletableFuture<Integer>> known =
                Stream.generate(CompletableFuture<Integer>::new).limit(9).toList();
        List<Integer> sums = TwoAtATime.each(9, i -> {
            int sum = i + (i == 0 ? 0 : known.get(i - 1).join());
            known.get(i).complete(sum);
            return sum;
        });
        assertThat(sums).containsExactly(0, 1, 3, 6, 10, 15, 21, 28, 36);
    }

    @Test
    void theFirstThatFailsIsToldWhenAllAreOver() {
        AtomicInteger begun = new AtomicInteger();
        assertThatThrownBy(() -> TwoAtATime.each(6, i -> {
                    begun.incrementAndGet();
                    if (i > 1) {
                        throw new IllegalStateException("piece " + i);
                    }
                    return i;
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("piece 2");
        assertThat(begun.get()).isEqualTo(6);
    }
}
