package setwright.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.export.ExportTables;
import setwright.app.export.Format;
import setwright.app.export.Material;
import setwright.app.export.TableWriter;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Diagnostician;
import setwright.fleet.measure.InventedTree;

/** The program as a user starts it, with two workers that are processes of their own, of which one is killed at work. */
final class WorkersIT {
    private static final int IN_FRONT = 5;
    private static final int RECORDINGS = 6;

    @TempDir
    private Path folder;

    @Test
    void aKilledWorkerLosesNothing() throws Exception {
        Path tree = folder.resolve("tree");
        Path out = folder.resolve("out");
        new InventedTree(RECORDINGS, 3, 25.0, 100).write(tree);
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-Xlog:disable",
                        "-cp",
                        classPath(),
                        "setwright.app.Main",
                        "fleet",
                        "diagnose",
                        "--in",
                        "tree",
                        "--out",
                        "out",
                        "--workers",
                        "2",
                        "--json")
                .directory(folder.toFile())
                .redirectOutput(folder.resolve("results.txt").toFile())
                .redirectError(folder.resolve("messages.txt").toFile())
                .start();
        try {
            ProcessHandle killed = killOneAtWork(program, out);
            assertThat(program.waitFor(5, TimeUnit.MINUTES)).isTrue();
            assertThat(program.exitValue())
                    .as(Files.readString(folder.resolve("messages.txt")))
                    .isIn(0, 4);
            assertThat(killed.isAlive()).isFalse();
        } finally {
            program.descendants().forEach(ProcessHandle::destroy);
            program.destroy();
        }
        assertThat(Files.readString(folder.resolve("results.txt")))
                .contains("\"recordings\" : " + RECORDINGS, "\"failed\" : 0", "\"left\" : 0");
        sameAsOneMachine(tree, out);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("tree", "out", "results.txt", "messages.txt");
        }
    }

    /** Without the folders that are named from where the tests run. */
    private static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** As soon as a worker has taken up a recording, and others are still to be judged. */
    private static ProcessHandle killOneAtWork(Process program, Path out) throws Exception {
        while (program.isAlive()) {
            List<ProcessHandle> workers = program.children() // the run
                    .flatMap(ProcessHandle::children)
                    .filter(one -> one.info().command().orElse("").endsWith("java"))
                    .toList();
            if (workers.size() == 2 && atWork(out.resolve("_run/trying"))) {
                workers.get(0).destroyForcibly();
                return workers.get(0);
            }
            Thread.sleep(20);
        }
        throw new AssertionError("it was over before a worker was seen at work: "
                + Files.readString(out.resolveSibling("messages.txt")));
    }

    private static boolean atWork(Path marks) throws IOException {
        if (!Files.isDirectory(marks)) {
            return false;
        }
        try (Stream<Path> all = Files.list(marks)) {
            return all.findAny().isPresent();
        }
    }

    /** The workers had one thread for each recording, this process has more (pom.xml). */
    private void sameAsOneMachine(Path tree, Path out) throws IOException {
        Map<String, Answer> answers = new TreeMap<>();
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path recording : all.filter(
                            file -> file.getFileName().toString().startsWith("laps."))
                    .toList()) {
                answers.put(
                        tree.relativize(recording).toString(),
                        new FileDiagnoser(Diagnostician::diagnose)
                                .diagnose(
                                        DiagnoseRequest.of(
                                                recording,
                                                Optional.of(recording.resolveSibling("car.yaml")),
                                                Optional.empty(),
                                                Optional.of(out.resolve("circuits/skarnholt.json"))),
                                        Progress.silent()));
            }
        }
        assertThat(answers).hasSize(RECORDINGS);
        for (String table : List.of("laps", "passes", "phases", "findings", "faults")) {
            List<Path> files = Rows.files(out.resolve(table));
            int rows = 0;
            for (Map.Entry<String, Answer> one : answers.entrySet()) {
                Path alone = folder.resolve("alone.parquet");
                new TableWriter(
                                ExportTables.named(table).orElseThrow(),
                                Material.of(List.of(new Material.Laps(
                                        one.getKey().replaceFirst(".*/", ""), one.getValue(), Optional.empty()))),
                                Format.PARQUET,
                                UnitSystem.METRIC)
                        .write(alone);
                List<List<Object>> expected = Rows.of(List.of(alone), "");
                assertThat(Rows.without(IN_FRONT, Rows.of(files, "WHERE recording = '" + one.getKey() + "'")))
                        .isEqualTo(expected);
                rows += expected.size();
                Files.delete(alone);
            }
            assertThat(Rows.of(files, "")).as("no row of anything else").hasSize(rows);
        }
    }
}
