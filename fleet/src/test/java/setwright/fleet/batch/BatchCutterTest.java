package setwright.fleet.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import setwright.fleet.tree.Labels;
import setwright.fleet.tree.Recorded;

final class BatchCutterTest {
    private static final long SEED = 20_310_509L;

    private static Member member(String path, String circuit, long bytes) {
        return new Member(new Recorded(path, bytes, 1L, new Labels(circuit, "", "", "", ""), "", "", ""), "digest");
    }

    private static List<Member> many(int count) {
        Random random = new Random(SEED);
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            members.add(member("r" + i, "c" + random.nextInt(3), 1 + random.nextInt(1000)));
        }
        return members;
    }

    @Test
    void everyRecordingIsInOneBatchAndNoBatchIsTooLarge() {
        List<Member> members = many(500);
        List<Batch> batches = new BatchCutter(7, 2500).cut(members, Set.of("c1"));
        assertThat(batches.stream().flatMap(batch -> batch.members().stream()).toList())
                .as("seed " + SEED)
                .containsExactlyInAnyOrderElementsOf(members);
        assertThat(batches).allSatisfy(batch -> {
            assertThat(batch.members()).hasSizeBetween(1, 7);
            assertThat(batch.bytes()).isLessThanOrEqualTo(2500);
            assertThat(batch.members())
                    .allSatisfy(
                            member -> assertThat(member.recorded().circuit()).isEqualTo(batch.circuit()));
            assertThat(batch.circuitKept()).isEqualTo(batch.circuit().equals("c1"));
        });
        assertThat(batches).isSortedAccordingTo(Comparator.comparingLong((Batch batch) -> -batch.bytes()));
        assertThat(batches).extracting(Batch::id).doesNotHaveDuplicates();
    }

    @Test
    void theSameRecordingsGiveTheSameBatchesInWhateverOrderTheyCome() {
        List<Member> members = many(200);
        List<Batch> batches = new BatchCutter(7, 2500).cut(members, Set.of());
        Collections.shuffle(members, new Random(SEED));
        assertThat(new BatchCutter(7, 2500).cut(members, Set.of())).isEqualTo(batches);
    }

    @Test
    void aFileLargerThanABatchMayBeIsABatchOfItsOwn() {
        assertThat(new BatchCutter(10, 100)
                        .cut(List.of(member("a", "", 5), member("b", "", 500), member("c", "", 5)), Set.of()))
                .extracting(Batch::bytes)
                .containsExactly(500L, 10L);
    }

    @Test
    void anotherFileOrAnotherCarSheetGivesABatchAnotherName() {
        Recorded recorded = member("a", "", 5).recorded();
        Recorded later = new Recorded("a", 5, 2L, Labels.NONE, "", "", "");
        assertThat(List.of(
                        Batch.of("", false, List.of(new Member(recorded, "digest")))
                                .id(),
                        Batch.of("", false, List.of(new Member(later, "digest")))
                                .id(),
                        Batch.of("", false, List.of(new Member(recorded, "other")))
                                .id()))
                .doesNotHaveDuplicates();
    }

    @Test
    void fewRecordingsAreSpreadOverAllCores() {
        assertThat(BatchCutter.forCores(16, 2).most()).isEqualTo(2);
        assertThat(BatchCutter.forCores(3, 2).most()).isEqualTo(1);
        assertThat(BatchCutter.forCores(100_000, 2).most()).isEqualTo(32);
    }
}
