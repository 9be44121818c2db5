package setwright.fleet.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OurJarsTest {
    @TempDir
    private Path folder;

    private Path jar(String name, String libraries) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        if (!libraries.isEmpty()) {
            manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, libraries);
        }
        Path jar = folder.resolve(name);
        new JarOutputStream(Files.newOutputStream(jar), manifest).close();
        return jar;
    }

    private static String path(Path... entries) {
        return Stream.of(entries).map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    @Test
    void theProgramsJarsAndTheLibrariesThatItNamesAreSent() throws IOException {
        Path fleet = jar("setwright-fleet.jar", "");
        Path program = jar("setwright.jar", "lib/setwright-core-1.jar lib/engine-2.jar lib/left-out-3.jar");
        Path core = jar("setwright-core-1.jar", "");
        Path engine = jar("engine-2.jar", "");
        Path cluster = jar("cluster-4.jar", "lib/another-5.jar");
        assertThat(OurJars.sent(path(folder, fleet, cluster, engine, core, program, folder.resolve("gone.jar"))))
                .containsExactly(
                        fleet.toUri().toString(),
                        engine.toUri().toString(),
                        core.toUri().toString(),
                        program.toUri().toString());
    }

    @Test
    void nothingIsSentWhereTheProgramIsNotPacked() throws IOException {
        assertThat(OurJars.sent(path(folder, jar("cluster-4.jar", "")))).isEmpty();
    }

    /** A cluster finds its own places and addresses; this machine is told to keep to itself. */
    @Test
    void aClusterIsSetUpOtherwiseThanThisMachine() {
        SparkConf far = Settings.of("spark://host:7077", folder);
        SparkConf here = Settings.of("local[2]", folder);
        assertThat(far.get("spark.master")).isEqualTo("spark://host:7077");
        assertThat(here.get("spark.master")).startsWith("local[2,");
        assertThat(far.contains("spark.jars")).isTrue();
        assertThat(here.contains("spark.jars")).isFalse();
        for (String own : new String[] {"spark.driver.host", "spark.driver.bindAddress", "spark.local.dir"}) {
            assertThat(far.contains(own)).as(own).isFalse();
            assertThat(here.contains(own)).as(own).isTrue();
        }
        for (SparkConf conf : new SparkConf[] {far, here}) {
            assertThat(conf.get("spark.executor.extraJavaOptions")).contains(Settings.ONE_THREAD, Settings.LOGGING);
            assertThat(conf.get("spark.speculation")).isEqualTo("false");
        }
    }
}
