package setwright.benchmarks.measure;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/** On what and of what was measured. */
public final class Machine {
    private static final double GIGABYTE = 1.0e9;

    private Machine() {}

    /**
     * Returns processor, memory, Java, commit and date in a sentence.
     *
     * @param home  folder of the sources
     */
    public static String words(Path home) {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return String.format(
                Locale.ROOT,
                "%s, %d cores, %.0f GB of memory; %s %s; commit %s; %s",
                processor(),
                Runtime.getRuntime().availableProcessors(),
                system.getTotalMemorySize() / GIGABYTE,
                System.getProperty("java.vm.name"),
                System.getProperty("java.version"),
                commit(home),
                LocalDate.now(ZoneOffset.UTC));
    }

    /** Returns processes that want a core, mean of the last minute; negative where the system does not tell. */
    public static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }

    private static String processor() {
        try {
            return Files.readAllLines(Path.of("/proc/cpuinfo")).stream()
                    .filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse(System.getProperty("os.arch"));
        } catch (IOException e) {
            return System.getProperty("os.arch");
        }
    }

    private static String commit(Path home) {
        String name = told(home, "rev-parse", "--short", "HEAD");
        if (name.isEmpty()) {
            return "unknown";
        }
        return name
                + (told(home, "status", "--porcelain", "--untracked-files=no").isEmpty() ? "" : " with changes");
    }

    private static String told(Path home, String... words) {
        List<String> command = new java.util.ArrayList<>(List.of("git", "-C", home.toString()));
        command.addAll(List.of(words));
        try {
            Process git = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String text = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return git.waitFor() == 0 ? text : "";
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
