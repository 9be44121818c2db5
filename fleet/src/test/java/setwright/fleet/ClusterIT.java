package setwright.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.fleet.measure.InventedTree;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The program as a user starts it, with a cluster that has nothing of it. */
final class ClusterIT {
    /** Of one driver: before and after he changed the bar. */
    private static final int RECORDINGS = 2;

    @TempDir
    private Path folder;

    @Test
    void aClusterJudgesWithWhatIsSentToIt() throws Exception {
        Path tree = folder.resolve("tree");
        Path out = folder.resolve("out");
        new InventedTree(RECORDINGS, 6, 25.0, 100, 1).write(tree);
        try (Cluster cluster = new Cluster(folder.resolve("cluster"));
                Program program = new Program(
                        folder,
                        "diagnose",
                        List.of("-Dspark.driver.host=127.0.0.1", "-Dspark.driver.bindAddress=127.0.0.1"),
                        "fleet",
                        "diagnose",
                        "--in",
                        "tree",
                        "--out",
                        "out",
                        "--master",
                        cluster.address(),
                        "--json")) {
            JsonNode count;
            try {
                count = JsonMapper.shared().readTree(program.results());
            } catch (AssertionError e) {
                throw new AssertionError(cluster.logs(), e);
            }
            assertThat(count.get("judged").asInt()).as(program.messages()).isEqualTo(RECORDINGS);
            assertThat(cluster.fetched()).anyMatch(name -> name.equals("setwright-fleet.jar"));
        }
        new OneMachine(tree, out.resolve("circuits/skarnholt.json")).isEqualledBy(out, folder);
    }
}
