package setwright.core.numerics;

import java.util.List;
import java.util.stream.IntStream;

/** Some of many, evenly spread over them. */
public final class EvenSample {
    private EvenSample() {}

    /**
     * Takes a sample, the first always in it.
     *
     * @param all   in order
     * @param most  how many are taken at most, &gt; 0
     * @return in the same order; all of them where there are no more
     */
    public static <T> List<T> of(List<T> all, int most) {
        int count = Math.min(all.size(), most);
        return IntStream.range(0, count)
                .mapToObj(i -> all.get((int) ((long) i * all.size() / count)))
                .toList();
    }
}
