package setwright.fleet.spark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** The folder that Spark takes for its installation when it starts workers on this machine. */
public final class WorkersHome {
    /** Set for a process that may start workers. */
    private static final String MARK = "SETWRIGHT_WORKERS";

    private static final String HOME = "SPARK_HOME";

    private WorkersHome() {}

    /** Tells whether this process may start workers. */
    public static boolean isHome() {
        return System.getenv(MARK) != null;
    }

    /**
     * Makes a folder such a home; the jars themselves come by the class path.
     *
     * @param environment  of the process that is to start workers
     */
    public static void prepare(Path home, Map<String, String> environment) throws IOException {
        Files.createDirectories(home.resolve("jars"));
        Files.createFile(home.resolve("RELEASE"));
        environment.put(HOME, home.toString());
        environment.put("SPARK_SCALA_VERSION", "2.13");
        environment.put("SPARK_LOCAL_IP", "127.0.0.1");
        environment.put(MARK, "1");
    }
}
