package setwright.benchmarks.measure;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/**
 * What something took.
 *
 * @param wallS       on the clock, s
 * @param processorS  of all processors together, s; NaN where the system does not tell
 * @param peakBytes   most memory that the process ever held; NaN where it is not of a process of its own
 */
public record Spent(double wallS, double processorS, double peakBytes) {
    private static final double NS = 1.0e9;

    /** Something that is done. */
    @FunctionalInterface
    public interface Work {
        /** Does it. */
        void run() throws Exception;
    }

    /** Does something in this process, and everything that waits to be collected before it. */
    public static Spent on(Work work) throws Exception {
        System.gc(); // else one's garbage is the other's time
        long processor = processorNs();
        long begun = System.nanoTime();
        work.run();
        long wall = System.nanoTime() - begun;
        return new Spent(wall / NS, (processorNs() - processor) / NS, Double.NaN);
    }

    /** Returns this for one of several that were done together. */
    public Spent over(int times) {
        return new Spent(wallS / times, processorS / times, peakBytes);
    }

    private static long processorNs() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
