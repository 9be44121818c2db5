package setwright.fleet.depot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.hadoop.conf.Configuration;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every depot does, of this machine or of Hadoop's file systems (here one that lies on this machine, too). */
final class DepotTest {
    @TempDir
    private static Path root;

    static Stream<Depot> depots() throws IOException {
        return Stream.of(
                Depots.open(Files.createDirectories(root.resolve("local")).toString(), new Configuration(false)),
                Depots.open(
                        Elsewhere.SCHEME + "://" + Files.createDirectories(root.resolve("hadoop")),
                        Elsewhere.configuration()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("depots")
    void filesComeBackAndAreListedInOrder(Depot depot) throws IOException {
        depot.put(bytes("one"), "b/circuit=a%20b/1.txt");
        depot.put(bytes("two"), "a/ä.txt");
        depot.put(bytes("other"), "a/ä.txt");
        assertThat(depot.list("")).extracting(Listed::name).containsExactly("a/ä.txt", "b/circuit=a%20b/1.txt");
        assertThat(depot.list("b")).singleElement().satisfies(file -> {
            assertThat(file.name()).isEqualTo("b/circuit=a%20b/1.txt");
            assertThat(file.bytes()).isEqualTo(3);
        });
        assertThat(depot.list("none")).isEmpty();
        assertThat(depot.read("a/ä.txt")).isEqualTo(bytes("other"));
        assertThat(depot.has("b")).isTrue();
        depot.delete("b");
        depot.delete("b");
        assertThat(depot.has("b")).isFalse();
        Path here = depot.local("a/ä.txt", Files.createTempDirectory(root, "copies"));
        assertThat(here).hasFileName("ä.txt").hasContent("other");
        depot.put(here, "c.txt");
        assertThat(depot.read("c.txt")).isEqualTo(bytes("other"));
        depot.delete("a");
        depot.delete("c.txt");
        assertThat(depot.list("")).as("nothing is left beside").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("depots")
    void onlyOneMayHoldIt(Depot depot) throws IOException {
        try (Depot.Hold hold = depot.hold("_run/at-work", "the first run")) {
            assertThatThrownBy(() -> depot.hold("_run/at-work", "the second run"))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("the first run is writing into");
        }
        depot.hold("_run/at-work", "the third run").close();
        depot.delete("_run");
    }
}
