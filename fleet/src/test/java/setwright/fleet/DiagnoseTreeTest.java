package setwright.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetRequest;
import setwright.app.fleet.FleetRequest.Again;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.depot.Elsewhere;
import setwright.fleet.ledger.Ledger;
import setwright.fleet.measure.InventedTree;
import setwright.fleet.work.OutTables;
import setwright.intake.columns.ParquetTable.Kind;

/** The whole road with Spark in this process: ten recordings of two drivers, five of them broken, each in its own way. */
final class DiagnoseTreeTest {
    private static final List<String> TABLES =
            List.of("laps", "passes", "phases", "findings", "faults", "setups", "recordings");
    private static final Map<Kind, String> TYPES =
            Map.of(Kind.TEXT, "VARCHAR", Kind.WHOLE, "BIGINT", Kind.NUMBER, "DOUBLE", Kind.TRUTH, "BOOLEAN");

    @TempDir
    private static Path folder;

    private static Path tree;
    private static Path judged;
    private static FleetCount count;
    private static OneMachine one;

    @BeforeAll
    static void judge() throws IOException {
        tree = folder.resolve("tree");
        judged = folder.resolve("judged");
        new InventedTree(10, 6, 25.0, 2, 1).write(tree);
        count = run(tree.toString(), judged.toString(), Again.NONE);
        one = new OneMachine(tree, judged.resolve("circuits/skarnholt.json"));
    }

    private static FleetCount run(String in, String out, Again again) throws IOException {
        return new SparkFleet()
                .diagnose(new FleetRequest(in, out, "local[2]", 0, Integer.MAX_VALUE, again, false), words -> {});
    }

    private static Path copied(Path from, String name) throws IOException {
        Path to = folder.resolve(name);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path one : all.toList()) {
                Path copy = to.resolve(from.relativize(one).toString());
                Files.copy(one, copy, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return to;
    }

    private static Map<String, Long> times(Path out) throws IOException {
        Map<String, Long> times = new TreeMap<>();
        for (String table : TABLES) {
            for (Path file : Rows.files(out.resolve(table))) {
                times.put(
                        out.relativize(file).toString(),
                        Files.getLastModifiedTime(file).toMillis());
            }
        }
        return times;
    }

    /** All rows of a table but what tells of time and files. */
    private static List<String> rows(Path out, String table) {
        return Rows.of(Rows.files(out.resolve(table)), "").stream()
                .map(row -> table.equals("recordings") ? row.subList(0, row.size() - 2) : row)
                .map(String::valueOf)
                .sorted()
                .toList();
    }

    private static void sameTables(Path out, Path as) {
        for (String table : TABLES) {
            assertThat(rows(out, table)).as(table).isEqualTo(rows(as, table));
        }
    }

    private static List<Path> recordings() throws IOException {
        return OneMachine.recordings(tree);
    }

    private static List<List<Object>> ledger(String where) {
        return Rows.ask("SELECT recording, status, reason FROM read_parquet('" + judged + "/recordings/*/*.parquet') "
                + where + " ORDER BY recording");
    }

    @Test
    void everyRecordingIsListedWithWhatTheCommandLineWouldSay() throws IOException {
        assertThat(count.recordings()).isEqualTo(10);
        assertThat(count.failed()).isEqualTo(5);
        assertThat(count.judged()).isEqualTo(5);
        assertThat(one.judged()).isEqualTo(5);
        assertThat(count.failures()).hasSize(5);
        List<List<Object>> rows = ledger("");
        assertThat(rows).hasSize(10);
        for (int i = 0; i < 10; i++) {
            Path recording = recordings().get(i);
            assertThat(rows.get(i).get(0)).isEqualTo(tree.relativize(recording).toString());
            String reason = String.valueOf(rows.get(i).get(2));
            if (!Files.exists(recording.resolveSibling("car.yaml"))) {
                assertThat(reason).contains("no car sheet", "laps.car.yaml", "--assume-car");
                continue;
            }
            assertThat(reason)
                    .isNotEmpty()
                    .isEqualTo(one.reason(String.valueOf(rows.get(i).get(0))));
        }
        assertThat(rows.stream().map(row -> row.get(1)))
                .containsOnly("judged", "failed")
                .filteredOn("judged"::equals)
                .hasSize(5);
    }

    /** The threads of this process are more than one for a recording (pom.xml), those of a worker are not (WorkersIT). */
    @Test
    void tablesAreThoseOfExportToTheBit() throws IOException {
        one.isEqualledBy(judged, folder);
    }

    @Test
    void everyFileOfATableHasTheColumnsThatAreReadLater() {
        for (String table : TABLES) {
            List<Path> files = Rows.files(judged.resolve(table));
            List<String> defined = OutTables.columns(table).stream()
                    .map(column -> column.siHeader() + " " + TYPES.get(column.kind()))
                    .toList();
            assertThat(files)
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(Rows.columns(file)).isEqualTo(defined));
        }
    }

    @Test
    void otherEnginesFindTheCircuitInTheNamesOfFolders() {
        assertThat(Rows.ask("SELECT DISTINCT circuit FROM read_parquet('" + judged
                        + "/passes/*/*.parquet', hive_partitioning = true)"))
                .containsExactly(List.of("skarnholt"));
    }

    @Test
    void aSecondRunTouchesNothing() throws IOException {
        Map<String, Long> before = times(judged);
        FleetCount again = run(tree.toString(), judged.toString(), Again.NONE);
        assertThat(again.before()).isEqualTo(10);
        assertThat(again.failed()).isEqualTo(5);
        assertThat(times(judged)).isEqualTo(before);
    }

    @Test
    void whatAKilledRunLeavesIsSweptAwayAndDoneOnce() throws IOException {
        Path out = copied(judged, "killed");
        // One batch was not committed, of another one only the passes were there, a third was being written, a mark was
        // left.
        Files.delete(Rows.files(out.resolve("recordings")).get(0));
        Path passes = Rows.files(out.resolve("passes")).get(1);
        Files.copy(passes, passes.resolveSibling("0123456789abcdef.parquet"));
        Files.writeString(passes.resolveSibling(".x.parquet.part"), "half");
        Files.createDirectories(out.resolve("_run/trying/x"));
        Files.writeString(out.resolve("_run/trying/x/0-0"), "");
        FleetCount again = run(tree.toString(), out.toString(), Again.NONE);
        assertThat(again.before()).isBetween(1, 9);
        sameTables(out, judged);
        assertThat(passes.resolveSibling(".x.parquet.part")).doesNotExist();
    }

    @Test
    void aChangedRecordingIsJudgedAnewAndHasItsRowsOnce() throws IOException {
        Path other = copied(tree, "changed tree");
        Path out = copied(judged, "changed");
        Path good = recordings().get(0);
        Path changed = other.resolve(tree.relativize(good).toString());
        Files.setLastModifiedTime(
                changed, FileTime.fromMillis(Files.getLastModifiedTime(changed).toMillis() + 5000));
        FleetCount again = run(other.toString(), out.toString(), Again.NONE);
        assertThat(again.before()).isEqualTo(9);
        for (String table : OneMachine.EXPORTED) {
            assertThat(rows(out, table)).as(table).isEqualTo(rows(judged, table));
        }
        assertThat(Rows.of(Rows.files(out.resolve("recordings")), "")).hasSize(10);
    }

    @Test
    void failedOnesAreTriedAgainWhenAskedFor() throws IOException {
        Path other = copied(tree, "mended tree");
        Path out = copied(judged, "mended");
        Path bare = recordings().stream()
                .filter(file -> file.endsWith("laps.csv") || file.endsWith("laps.parquet"))
                .filter(file -> !Files.exists(file.resolveSibling("car.yaml")))
                .findFirst()
                .orElseThrow();
        // A sheet that comes later changes what the recording is judged from; the others failed for reasons of their
        // own.
        Files.copy(
                recordings().get(0).resolveSibling("car.yaml"),
                other.resolve(tree.relativize(bare).toString()).resolveSibling("car.yaml"));
        FleetCount mended = run(other.toString(), out.toString(), Again.NONE);
        assertThat(mended.judged()).isEqualTo(6);
        assertThat(mended.failed()).isEqualTo(4);
        assertThat(mended.before()).isEqualTo(9);
        FleetCount again = run(other.toString(), out.toString(), Again.FAILED);
        assertThat(again.failed()).isEqualTo(4);
        assertThat(again.before()).isEqualTo(6);
        assertThat(Rows.of(Rows.files(out.resolve("recordings")), "")).hasSize(10);
    }

    @Test
    void filesMayLieWhereOnlyHadoopReaches() throws IOException {
        Path out = folder.resolve("far");
        System.setProperty("spark.hadoop.fs." + Elsewhere.SCHEME + ".impl", Elsewhere.class.getName());
        try {
            run(Elsewhere.SCHEME + "://" + tree, Elsewhere.SCHEME + "://" + out, Again.NONE);
        } finally {
            System.clearProperty("spark.hadoop.fs." + Elsewhere.SCHEME + ".impl");
        }
        for (String table : OneMachine.EXPORTED) {
            assertThat(rows(out, table)).as(table).isEqualTo(rows(judged, table));
        }
    }

    /** Columns come with versions: where some files lack one that is not needed to know what is done, nothing is done again. */
    @Test
    void aListOfAnOlderVersionIsReadOrRefusedInAWord() throws IOException {
        Path out = copied(judged, "older");
        List<Path> ledger = Rows.files(out.resolve("recordings"));
        without("reason", ledger.get(0));
        assertThat(run(tree.toString(), out.toString(), Again.NONE).before()).isEqualTo(10);
        for (Path file : ledger) {
            without("inputs", file);
        }
        assertThatThrownBy(() -> run(tree.toString(), out.toString(), Again.NONE))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("another version of the program wrote it")
                .hasMessageContaining("inputs");
    }

    private static void without(String column, Path file) throws IOException {
        Path whole = Files.move(file, folder.resolve("whole.parquet"));
        Rows.copyWithout(column, whole, file);
        Files.delete(whole);
    }

    @Test
    void aSecondRunAtTheSameTimeIsRefused() throws IOException {
        Depot out = Depots.open(judged.toString(), new Configuration(false));
        try (Depot.Hold hold = Ledger.hold(out, "another run")) {
            assertThatThrownBy(() -> run(tree.toString(), judged.toString(), Again.NONE))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("another run is writing into");
        }
    }

    @Test
    void wrongPlacesAreRefusedInAWord() {
        assertThatThrownBy(() -> run(folder.resolve("none").toString(), judged.toString(), Again.NONE))
                .hasMessageContaining("there is no folder");
        assertThatThrownBy(() -> run(tree.toString(), tree.resolve("out").toString(), Again.NONE))
                .hasMessageContaining("among the recordings");
        assertThatThrownBy(() -> run(
                        judged.resolve("circuits").toString(),
                        folder.resolve("x").toString(),
                        Again.NONE))
                .hasMessageContaining("no recording in");
    }

    @Test
    void nothingIsLeftWhereItRan() {
        List<String> left = new ArrayList<>();
        for (String name : List.of("work", "spark-warehouse", "metastore_db", "derby.log", "artifacts")) {
            if (Files.exists(Path.of(name))) {
                left.add(name);
            }
        }
        assertThat(left.stream().collect(Collectors.toList())).isEmpty();
    }
}
