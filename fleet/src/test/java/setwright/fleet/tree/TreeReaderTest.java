package setwright.fleet.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.fleet.depot.Depots;

final class TreeReaderTest {
    @TempDir
    private Path root;

    private void put(String name) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "some");
    }

    private List<Recorded> read() throws IOException {
        return TreeReader.read(Depots.open(root.toString(), new Configuration(false)));
    }

    @Test
    void recordingsAreKnownByTheirEndingsAndSortedByPath() throws IOException {
        for (String name :
                List.of("b/2.CSV", "b/1.csv.gz", "a/x.parquet", "a/x.mf4", "a/notes.txt", "a/car.yaml", "c.gpx")) {
            put(name);
        }
        put(".hidden/1.csv");
        put("_left/1.csv");
        put("a/.1.csv");
        assertThat(read())
                .extracting(Recorded::path)
                .containsExactly("a/x.mf4", "a/x.parquet", "b/1.csv.gz", "b/2.CSV", "c.gpx");
    }

    @Test
    void theNearestCompanionGoesWithARecording() throws IOException {
        for (String name : List.of(
                "car.yaml",
                "a/car.yaml",
                "a/own.car.yaml",
                "a/own.csv",
                "a/b/far.csv",
                "z/top.csv",
                "a/b/map.yaml",
                "circuit.json")) {
            put(name);
        }
        assertThat(read())
                .extracting(Recorded::path, Recorded::sheet, Recorded::map, Recorded::circuitFile)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "a/b/far.csv", "a/car.yaml", "a/b/map.yaml", "circuit.json"),
                        org.assertj.core.groups.Tuple.tuple("a/own.csv", "a/own.car.yaml", "", "circuit.json"),
                        org.assertj.core.groups.Tuple.tuple("z/top.csv", "car.yaml", "", "circuit.json"));
    }

    @Test
    void foldersSayWhoDroveWhere() throws IOException {
        put("circuit=Old%20Hill/driver=Z%C3%BCst/car=one/date=2031-05-09/session=2/other=3/laps.csv");
        assertThat(read().get(0).labels()).isEqualTo(new Labels("Old Hill", "Züst", "one", "2031-05-09", "2"));
    }

    @Test
    void aCircuitIsNamedByItsFolderWhereNothingElseNamesIt() throws IOException {
        put("north/circuit.json");
        put("north/deep/1.csv");
        put("circuit=south/1.csv");
        put("alone/1.csv");
        assertThat(read()).extracting(Recorded::circuit).containsExactly("", "south", "north");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hill",
                "Old Hill",
                "a/b",
                "50%",
                "100%25",
                "=x=",
                ".dot",
                "Zürich",
                "日本 \uD83C\uDFC1",
                "a:b*c?\"d"
            })
    void aNameOfAFolderHoldsAnyText(String value) {
        String folder = PartName.write("circuit", value);
        assertThat(folder).doesNotContain("/", ":", "*", "?").startsWith("circuit=");
        assertThat(PartName.read(folder)).contains(new PartName.Part("circuit", value));
    }

    @Test
    void noValueHasANameOfItsOwn() {
        assertThat(PartName.read(PartName.write("circuit", ""))).contains(new PartName.Part("circuit", ""));
        assertThat(PartName.read("no key")).isEmpty();
        assertThat(PartName.read("=value")).isEmpty();
    }
}
