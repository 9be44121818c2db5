package setwright.benchmarks.measure;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How Java machines are started that measure: as {@code ./setwright} starts the program. */
public final class JavaCommand {
    /** Options of the program's own machine. */
    public static final List<String> OPTIONS = List.of("-Xlog:disable", "-XX:+UseSerialGC", "-XX:MaxRAMPercentage=50");

    private JavaCommand() {}

    /** Returns the option that lets a machine see so many cores. */
    public static String cores(int threads) {
        return "-XX:ActiveProcessorCount=" + threads;
    }

    /** Returns the command that runs one of our classes with our class path. */
    public static List<String> of(List<String> options, Class<?> main, List<String> arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(OPTIONS);
        command.addAll(options);
        command.add("-cp");
        command.add(System.getProperty("java.class.path"));
        command.add(main.getName());
        command.addAll(arguments);
        return command;
    }
}
