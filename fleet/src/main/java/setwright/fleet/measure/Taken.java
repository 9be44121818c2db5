package setwright.fleet.measure;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What a process took.
 *
 * @param wallS       from its start to its end, s
 * @param processorS  on all processors together, with the processes that it started, to half a second of each, s; tells more where other work goes on
 * @param mostBytes   of memory that it held at a time, without the processes that it started; 0 where the system does not tell
 */
record Taken(double wallS, double processorS, long mostBytes) {
    private static final int LOOK_MS = 250;

    /**
     * Runs a class of this class path in a fresh process with the options of this one.
     *
     * @param more  options of the Java machine
     */
    static Taken by(List<String> more, String main, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
        command.addAll(more);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        long began = System.nanoTime();
        Process process = new ProcessBuilder(command).inheritIO().start();
        Map<Long, Long> processorMs = new HashMap<>();
        long most = 0;
        do {
            Stream.concat(Stream.of(process.toHandle()), process.descendants())
                    .forEach(one -> one.info()
                            .totalCpuDuration()
                            .ifPresent(taken -> processorMs.merge(one.pid(), taken.toMillis(), Math::max)));
            most = Math.max(most, heldBytes(process.pid()));
        } while (!process.waitFor(LOOK_MS, TimeUnit.MILLISECONDS));
        double wallS = 1.0e-9 * (System.nanoTime() - began);
        // 4: nothing but recordings without enough evidence
        if (process.exitValue() != 0 && process.exitValue() != 4) {
            throw new IOException(main + " ended with code " + process.exitValue());
        }
        return new Taken(
                wallS,
                1.0e-3
                        * processorMs.values().stream()
                                .mapToLong(Long::longValue)
                                .sum(),
                most);
    }

    /** As Linux tells it. */
    private static long heldBytes(long process) {
        try (Stream<String> lines = Files.lines(Path.of("/proc/" + process + "/status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) << 10)
                    .findFirst()
                    .orElse(0);
        } catch (IOException | RuntimeException e) {
            return 0;
        }
    }
}
