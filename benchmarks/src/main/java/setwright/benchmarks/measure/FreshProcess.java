package setwright.benchmarks.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Runs a command from its start to its end in a process of its own.
 *
 * <p>Processor time is what the system adds to the waiting process when a child has ended, in its ticks of 10 ms; memory is the
 * high-water mark of the system, looked at every 10 ms. Both are of Linux ({@code proc(5)}) and NaN elsewhere.
 */
public final class FreshProcess {
    private static final long LOOK_MS = 10;
    private static final double TICKS_PER_S = 100.0;
    private static final double NS = 1.0e9;
    private static final double KIB = 1024.0;
    private static final int CHILDREN_USER = 16 - 3;
    private static final int CHILDREN_SYSTEM = 17 - 3;
    private static final long LONGEST_S = 1800;
    /** Exit codes that are answers: done, and done without enough evidence for more. */
    private static final Set<Integer> ANSWERS = Set.of(0, 4);

    private FreshProcess() {}

    /**
     * Runs a command; what it says goes into a file.
     *
     * @param folder       that it works in
     * @param environment  added to ours
     * @throws IOException when it cannot be started, or fails: with what it said
     */
    public static Spent run(List<String> command, Path folder, Map<String, String> environment)
            throws IOException, InterruptedException {
        Path said = Files.createTempFile(folder, "said", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().putAll(environment);
        try {
            double before = childrenS();
            long begun = System.nanoTime();
            Process process = builder.start();
            double peak = Double.NaN;
            while (!process.waitFor(LOOK_MS, TimeUnit.MILLISECONDS)) {
                double now = peakBytes(process.pid());
                peak = Double.isNaN(peak) || now > peak ? now : peak;
                if ((System.nanoTime() - begun) / NS > LONGEST_S) {
                    process.destroyForcibly();
                    throw new IOException("took longer than " + LONGEST_S + " s: " + String.join(" ", command));
                }
            }
            double wall = (System.nanoTime() - begun) / NS;
            if (!ANSWERS.contains(process.exitValue())) {
                throw new IOException("ended with " + process.exitValue() + ": " + String.join(" ", command) + "\n"
                        + Files.readString(said));
            }
            return new Spent(wall, childrenS() - before, peak);
        } finally {
            Files.delete(said);
        }
    }

    /** Processor time of all children that have ended. */
    private static double childrenS() {
        try {
            String line = Files.readString(Path.of("/proc/self/stat"));
            // The name may hold blanks; fields are counted behind it, from the third on.
            String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ", -1);
            return (Long.parseLong(fields[CHILDREN_USER]) + Long.parseLong(fields[CHILDREN_SYSTEM])) / TICKS_PER_S;
        } catch (IOException e) {
            return Double.NaN;
        }
    }

    /** The most memory that a process has held; NaN when it is gone or the system does not tell. */
    public static double peakBytes(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToDouble(line -> KIB * Double.parseDouble(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(Double.NaN);
        } catch (IOException e) {
            return Double.NaN;
        }
    }
}
