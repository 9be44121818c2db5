package setwright.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.fleet.measure.InventedTree;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The program as a user starts it, with two workers that are processes of their own. It is killed at work; started again, it loses the worker that has a
 * recording in hand; and what it wrote in spite of that is what one machine says, and what a school then asks.
 */
final class WorkersIT {
    /** Of six drivers, as an interval needs. */
    private static final int RECORDINGS = 12;

    private static final int DRIVERS = 6;

    @TempDir
    private Path folder;

    @Test
    void killedRunsAndWorkersLoseNothing() throws Exception {
        Path tree = folder.resolve("tree");
        Path out = folder.resolve("out");
        new InventedTree(RECORDINGS, 6, 25.0, 100, 1).write(tree);
        killAtWork(out);
        Map<Path, FileTime> finished = ledger(out);
        assertThat(finished).hasSizeBetween(1, RECORDINGS - 2);

        try (Program again = diagnose("again")) {
            Path lost = killWorkerWithARecording(again, out.resolve("_run/trying"));
            String number = lost.getFileName().toString().replaceFirst("-0$", "");
            waitFor(again, lost.resolveSibling(number + "-1"));
            JsonNode count = JsonMapper.shared().readTree(again.results());
            assertThat(count.get("done_before").asInt()).isEqualTo(finished.size());
            assertThat(count.get("judged").asInt()).isEqualTo(RECORDINGS);
            assertThat(again.messages())
                    .contains("a worker died at a batch of 1 recording, attempt 1; it is tried again.");
        }
        assertThat(ledger(out)).hasSize(RECORDINGS).containsAllEntriesOf(finished);

        OneMachine one = new OneMachine(tree, out.resolve("circuits/skarnholt.json"));
        assertThat(one.judged()).isEqualTo(RECORDINGS);
        one.isEqualledBy(out, folder);
        summaryTellsWhatWasBuiltIn();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(file -> file.getFileName().toString()).filter(name -> !name.endsWith(".txt")))
                    .containsExactlyInAnyOrder("tree", "out", "temporary");
        }
    }

    private Program diagnose(String name) throws IOException {
        return new Program(
                folder,
                name,
                List.of(),
                "fleet",
                "diagnose",
                "--in",
                "tree",
                "--out",
                "out",
                "--workers",
                "2",
                "--json");
    }

    /** When something is finished; whatever worked for it ends by itself, or the next run would find the tables taken. */
    private void killAtWork(Path out) throws Exception {
        try (Program first = diagnose("first")) {
            while (ledger(out).isEmpty()) {
                assertThat(first.process().isAlive()).as(first.messages()).isTrue();
                Thread.sleep(20);
            }
            List<ProcessHandle> helpers = first.process().descendants().toList();
            assertThat(helpers).hasSizeGreaterThanOrEqualTo(3); // the run and its workers
            first.process().destroyForcibly();
            CompletableFuture.allOf(helpers.stream().map(ProcessHandle::onExit).toArray(CompletableFuture[]::new))
                    .get(1, TimeUnit.MINUTES);
        }
    }

    /** Returns its mark. A worker is halted before it is looked at again, so that it cannot finish in between. */
    private static Path killWorkerWithARecording(Program program, Path marks) throws Exception {
        while (program.process().isAlive()) {
            for (Path mark : all(marks, "[0-9]+-0")) {
                Optional<ProcessHandle> worker = worker(mark, program);
                if (worker.isPresent()) {
                    signal("-STOP", worker.get());
                    if (Files.exists(mark)) {
                        worker.get().destroyForcibly();
                        return mark;
                    }
                    signal("-CONT", worker.get());
                }
            }
            Thread.sleep(20);
        }
        throw new AssertionError("it was over before a worker was seen at work: " + program.messages());
    }

    /** The mark says which process has it; marks of the killed run are there until they are swept away. */
    private static Optional<ProcessHandle> worker(Path mark, Program program) throws IOException {
        String words;
        try {
            words = Files.readString(mark);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
        long number = Long.parseLong(words.replaceFirst("(?s).*\\(process ([0-9]+)\\).*", "$1"));
        return program.process()
                .descendants()
                .filter(one -> one.pid() == number)
                .findFirst();
    }

    private static void signal(String which, ProcessHandle process) throws IOException, InterruptedException {
        new ProcessBuilder("kill", which, String.valueOf(process.pid())).start().waitFor();
    }

    private static void waitFor(Program program, Path mark) throws Exception {
        while (!Files.exists(mark)) {
            assertThat(program.process().isAlive())
                    .as("tried again: " + program.messages())
                    .isTrue();
            Thread.sleep(5);
        }
    }

    private static Map<Path, FileTime> ledger(Path out) throws IOException {
        Map<Path, FileTime> times = new TreeMap<>();
        for (Path file : all(out.resolve("recordings"), "[^.].*\\.parquet")) {
            times.put(file, Files.getLastModifiedTime(file));
        }
        return times;
    }

    /** Files come and go while one looks. */
    private static List<Path> all(Path folder, String name) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.getFileName().toString().matches(name))
                    .toList();
        } catch (NoSuchFileException | UncheckedIOException e) {
            return List.of();
        }
    }

    private void summaryTellsWhatWasBuiltIn() throws Exception {
        JsonNode answer;
        try (Program summary = new Program(folder, "summary", List.of(), "fleet", "summary", "--in", "out", "--json")) {
            answer = JsonMapper.shared().readTree(summary.results());
        }
        assertThat(answer.get("recordings").get("judged").asInt()).isEqualTo(RECORDINGS);
        assertThat(answer.get("recordings").get("drivers").asInt()).isEqualTo(DRIVERS);
        // All began with a rear bar that was too soft, and put one on that suits the car.
        assertThat(answer.get("changes").size()).isEqualTo(1);
        JsonNode change = answer.get("changes").get(0);
        assertThat(change.get("item").asString()).isEqualTo("rear_bar");
        assertThat(change.get("direction").asString()).isEqualTo("up");
        assertThat(change.get("tries").asInt()).isEqualTo(DRIVERS);
        assertThat(change.get("told").asInt()).isEqualTo(DRIVERS);
        assertThat(change.get("gone").asInt()).isEqualTo(DRIVERS);
        assertThat(change.get("helped").get("too_few").asBoolean()).isFalse();
        assertThat(change.get("helped").get("low").asDouble()).isGreaterThan(0.5);
        // Half of them pick up the throttle early; the others coast at one corner once the car is as it should be.
        int understeer = 0;
        for (JsonNode problem : answer.get("problems")) {
            if (problem.get("kind").asString().equals("car")) {
                assertThat(problem.get("what").asString()).startsWith("understeer");
                understeer += problem.get("recordings").asInt();
            } else {
                assertThat(problem.get("what").asString()).isEqualTo("coasting with neither pedal");
                assertThat(problem.get("recordings").asInt()).isEqualTo(DRIVERS / 2);
                assertThat(problem.get("drivers").asInt()).isEqualTo(DRIVERS / 2);
            }
        }
        assertThat(understeer).isEqualTo(DRIVERS);
    }
}
