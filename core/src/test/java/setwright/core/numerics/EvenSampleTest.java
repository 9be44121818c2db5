package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class EvenSampleTest {
    @ParameterizedTest
    @CsvSource({"0, 3", "2, 3", "3, 3", "4, 3", "7, 3", "100, 7", "99, 40"})
    void stepsAreAlikeAndTheFirstIsThere(int size, int most) {
        List<Integer> all = IntStream.range(0, size).boxed().toList();

        List<Integer> some = EvenSample.of(all, most);

        assertThat(some).hasSize(Math.min(size, most)).doesNotHaveDuplicates().isSorted();
        if (size > 0) {
            assertThat(some.get(0)).isZero();
        }
        double step = (double) size / Math.min(Math.max(size, 1), most);
        for (int i = 1; i < some.size(); i++) {
            assertThat((double) some.get(i) - some.get(i - 1)).isBetween(Math.floor(step), Math.ceil(step));
        }
    }
}
