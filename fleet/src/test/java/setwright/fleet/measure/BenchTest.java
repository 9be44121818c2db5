package setwright.fleet.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.fleet.tree.Labels;
import setwright.fleet.tree.Recorded;

/** What a measurement may say when it has seen a part, and when it may say nothing. */
final class BenchTest {
    @TempDir
    private Path folder;

    private static List<Recorded> recordings(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Recorded(String.format("%04d.csv", i), 100 + i, 1, Labels.NONE, "car.yaml", "", ""))
                .toList();
    }

    @Test
    void aSampleHoldsBrokenOnesInTheirShareAndIsSpreadOverTheTree() {
        Set<String> broken = IntStream.range(0, 20)
                .mapToObj(i -> String.format("%04d.csv", 100 * i + 99))
                .collect(Collectors.toSet());
        List<Recorded> sample = Sample.of(recordings(2000), broken, 10);
        assertThat(sample).hasSize(200).doesNotHaveDuplicates().isEqualTo(Sample.of(recordings(2000), broken, 10));
        assertThat(sample).filteredOn(one -> broken.contains(one.path())).hasSize(2);
        assertThat(sample.stream().map(one -> one.path().substring(0, 2)).distinct())
                .hasSize(20);
    }

    @Test
    void withoutASampleTheBiggestGoFirst() {
        assertThat(Sample.of(recordings(3), Set.of(), 1))
                .extracting(Recorded::bytes)
                .containsExactly(102L, 101L, 100L);
    }

    /** Four of ten: the last two took 6 s, so the six that are missing take 18 s. */
    @Test
    void whatIsMissingCountsLikeTheSecondHalf() throws IOException {
        Map<String, String> ends = Map.of("a", "judged", "b", "judged", "c", "judged", "d", "failed");
        Path file = folder.resolve("answer");
        new BareAnswer(10, ends, 6.0, 10.0).write(file);
        assertThat(BareAnswer.read(file)).isEqualTo(new BareAnswer(10, ends, 6.0, 10.0));
        assertThat(BareAnswer.read(file).scaled(new Taken(20.0, 30.0, 1)))
                .isEqualTo(new Taken(20.0 + 18.0, 30.0 + 30.0, 1));
        assertThat(new BareAnswer(4, ends, 6.0, 10.0).scaled(new Taken(20.0, 30.0, 1)))
                .isEqualTo(new Taken(20.0, 30.0, 1));
    }

    @Test
    void endsThatDifferAreNoMeasurement() {
        Map<String, String> fleet = Map.of("a", "judged", "b", "failed", "c", "not enough evidence");
        assertThat(Ends.counted(fleet)).isEqualTo("3 recordings: 1 judged, 1 not judgeable, 1 failed");
        assertThatCode(() -> Ends.check(Map.of("a", "judged"), fleet, Set.of("b")))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> Ends.check(Map.of("a", "failed"), fleet, Set.of("b")))
                .hasMessageContaining("a: failed by the bare core, judged by the fleet");
        assertThatThrownBy(() -> Ends.check(Map.of(), fleet, Set.of()))
                .hasMessageContaining("b: failed, but was not broken");
        assertThatThrownBy(() -> Ends.check(Map.of(), fleet, Set.of("a", "b", "x")))
                .hasMessageContaining("a: was broken, but did not fail")
                .hasMessageContaining("x: was broken, but did not fail");
    }
}
