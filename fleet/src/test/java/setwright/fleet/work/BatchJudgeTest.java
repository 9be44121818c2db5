package setwright.fleet.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.diagnose.Diagnoser;
import setwright.core.circuit.NotEnoughLaps;
import setwright.fleet.Rows;
import setwright.fleet.batch.Batch;
import setwright.fleet.batch.BatchCutter;
import setwright.fleet.batch.Member;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.ledger.OutLayout;
import setwright.fleet.tree.Labels;
import setwright.fleet.tree.Recorded;

/** What becomes of recordings that fail in ways which files cannot be made to. */
final class BatchJudgeTest {
    @TempDir
    private Path folder;

    private final List<String> judged = new ArrayList<>();
    private Depot tree;
    private Depot out;
    private Batch batch;

    @BeforeEach
    void layOut() throws IOException {
        tree = Depots.open(Files.createDirectory(folder.resolve("tree")).toString(), new Configuration(false));
        out = Depots.open(folder.resolve("out").toString(), new Configuration(false));
        List<Member> members = new ArrayList<>();
        for (String name : List.of("a-memory.csv", "b-depth.csv", "c-fault.csv", "d-laps.csv")) {
            members.add(new Member(new Recorded(name, 1, 1, Labels.NONE, "car.yaml", "", ""), "digest"));
        }
        batch = new BatchCutter(10, 100).cut(members, Set.of()).get(0);
    }

    private final Diagnoser failing = (request, progress) -> {
        String name = request.recording().name();
        judged.add(name);
        switch (name) {
            case "a-memory.csv" -> throw new OutOfMemoryError("Java heap space");
            case "b-depth.csv" -> throw new StackOverflowError();
            case "c-fault.csv" -> throw new IllegalStateException("a fault\nof the program");
            default -> throw new NotEnoughLaps("one lap only.");
        }
    };

    private List<List<Object>> ledger() {
        return Rows.ask("SELECT recording, status, reason FROM read_parquet('" + folder.resolve("out")
                + "/recordings/*/*.parquet') ORDER BY recording");
    }

    @Test
    void anErrorOfTheMachineIsTheRecordingsAndStopsNothing() throws Exception {
        new BatchJudge(failing, tree, out, false).judge(batch, Task.FIRST);
        List<List<Object>> rows = ledger();
        assertThat(rows).hasSize(4);
        assertThat(rows.get(0).toString()).contains("failed", "needs more memory");
        assertThat(rows.get(1).toString()).contains("failed", "StackOverflowError");
        assertThat(rows.get(2).toString()).contains("failed", "a fault of the program");
        assertThat(rows.get(3).toString()).contains("not enough evidence", "one lap only");
        assertThat(out.has(OutLayout.TRYING + "/" + batch.id())).isFalse();
        for (String table : OutLayout.TABLES) {
            assertThat(out.has(OutLayout.file(table, "", batch.id()))).as(table).isTrue();
        }
    }

    @Test
    void aSecondAttemptOfWhatIsFinishedDoesNothing() throws Exception {
        BatchJudge judge = new BatchJudge(failing, tree, out, false);
        judge.judge(batch, Task.FIRST);
        judge.judge(batch, new Task(1, () -> false));
        assertThat(judged).hasSize(4);
    }

    @Test
    void aRecordingThatWorkersDieAtGoesLastAndIsListedAtTheThirdTime() throws Exception {
        String marks = OutLayout.TRYING + "/" + batch.id() + "/";
        out.put(new byte[0], marks + "1-0");
        out.put(new byte[0], marks + "1-1");
        out.put(new byte[0], marks + "0-2");
        BatchJudge judge = new BatchJudge(failing, tree, out, false);
        judge.judge(batch, new Task(3, () -> false));
        assertThat(judged).containsExactly("c-fault.csv", "d-laps.csv", "a-memory.csv", "b-depth.csv");

        out.delete(OutLayout.file(OutLayout.LEDGER, "", batch.id()));
        judged.clear();
        for (int attempt = 0; attempt < 3; attempt++) {
            out.put(new byte[0], marks + "1-" + attempt);
        }
        judge.judge(batch, new Task(3, () -> false));
        assertThat(judged).doesNotContain("b-depth.csv").hasSize(3);
        assertThat(ledger().get(1).toString()).contains("failed", "the worker died 3 times");
    }

    @Test
    void workThatIsStoppedBlamesNoRecording() {
        assertThatThrownBy(() -> new BatchJudge(failing, tree, out, false).judge(batch, new Task(0, () -> true)))
                .isInstanceOf(InterruptedException.class);
        assertThat(folder.resolve("out/recordings")).doesNotExist();
    }
}
