package setwright.fleet.spark;

import com.sun.management.OperatingSystemMXBean;
import java.io.File;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.spark.SparkConf;

/** How Spark is set up. */
public final class Settings {
    /** The core's second thread would take the core of another task. */
    static final String ONE_THREAD = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=1";

    /** Spark's; the program's own may lie beside it. */
    static final String LOGGING =
            "-Dslf4j.provider=org.apache.logging.slf4j.SLF4JServiceProvider -Dslf4j.internal.verbosity=WARN";

    /** Of one piece of work: three for each member of a batch, should all of them kill their worker, and a few by chance. */
    private static final int FAILURES = 100;

    private static final String HERE = "127.0.0.1";

    private Settings() {}

    /**
     * Returns settings for a master; those of the system's properties {@code spark.*} count first.
     *
     * @param master    as Spark names it
     * @param folder    for Spark's own files
     */
    public static SparkConf of(String master, Path folder) {
        SparkConf conf = new SparkConf()
                .setAppName("setwright fleet")
                .setMaster(master.matches("local(\\[[^,\\]]+])?") ? retrying(master) : master)
                .setIfMissing("spark.ui.enabled", "false")
                .setIfMissing("spark.task.maxFailures", String.valueOf(FAILURES))
                .setIfMissing(
                        "spark.sql.warehouse.dir",
                        folder.resolve("warehouse").toUri().toString())
                .setIfMissing("spark.sql.sources.partitionColumnTypeInference.enabled", "false")
                .setIfMissing("spark.locality.wait", "0s")
                .set("spark.speculation", "false"); // two attempts at once would write the same names
        if (isHere(master)) {
            conf.setIfMissing("spark.driver.bindAddress", HERE)
                    .setIfMissing("spark.driver.host", HERE)
                    .setIfMissing("spark.local.dir", folder.toString())
                    .setIfMissing("spark.sql.shuffle.partitions", "4");
        } else {
            conf.setIfMissing("spark.jars", String.join(",", OurJars.sent(System.getProperty("java.class.path"))));
        }
        conf.set(
                "spark.executor.extraJavaOptions",
                (ONE_THREAD + " " + LOGGING + " -Xlog:disable -Dfile.encoding=UTF-8 -Duser.language=en "
                                + conf.get("spark.executor.extraJavaOptions", ""))
                        .strip());
        return conf;
    }

    /** Returns settings for workers that are processes of this machine. */
    public static SparkConf workers(int count, Path folder) {
        long megabytes = memory(count);
        return of(String.format(Locale.ROOT, "local-cluster[%d,1,%d]", count, megabytes), folder)
                .set("spark.executor.memory", megabytes + "m")
                .set("spark.deploy.maxExecutorRetries", "-1") // what kills executors is found out by us
                .set("spark.executor.extraClassPath", absolute(System.getProperty("java.class.path")));
    }

    private static boolean isHere(String master) {
        return master.startsWith("local");
    }

    /** In one process a piece of work is tried once only, unless the master's name says otherwise. */
    private static String retrying(String master) {
        String cores = master.equals("local") ? "1" : master.substring("local[".length(), master.length() - 1);
        return "local[" + cores + "," + FAILURES + "]";
    }

    /** Half of the machine for all, 1 to 4 GB for each, in MB. */
    private static long memory(int workers) {
        long half = 512; // where nobody tells
        if (ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean machine) {
            half = (machine.getTotalMemorySize() / 2) >> 20;
        }
        return Math.max(1024, Math.min(4096, half / workers));
    }

    private static String absolute(String classPath) {
        return List.of(classPath.split(File.pathSeparator, -1)).stream()
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
