package setwright.fleet;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program as a user starts it, in a process of its own; what it leaves running ends with it. */
final class Program implements AutoCloseable {
    private static final long LONGEST_MINUTES = 5;

    private final Process process;
    private final Path results;
    private final Path messages;

    /**
     * Starts it.
     *
     * @param folder   where it runs
     * @param name     of the two files that hold what it writes
     * @param options  of the Java machine
     * @param words    that the user gives
     */
    Program(Path folder, String name, List<String> options, String... words) throws IOException {
        // What is killed leaves temporary files behind, its workers as well; here they go with the test.
        String temporary = "-Djava.io.tmpdir=" + Files.createDirectories(folder.resolve("temporary"));
        results = folder.resolve(name + ".results.txt");
        messages = folder.resolve(name + ".messages.txt");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                List.of("-Xmx512m", "-Xlog:disable", temporary, "-Dspark.executor.extraJavaOptions=" + temporary));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), "setwright.app.Main"));
        command.addAll(List.of(words));
        process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(results.toFile())
                .redirectError(messages.toFile())
                .start();
    }

    /** Without the folders that are named from where the tests run. */
    static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    Process process() {
        return process;
    }

    String messages() throws IOException {
        return Files.readString(messages);
    }

    /** Returns what it wrote, when it is over and all went well. */
    String results() throws IOException, InterruptedException {
        if (!process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)) {
            throw new AssertionError("it did not end: " + messages());
        }
        if (process.exitValue() != 0) {
            throw new AssertionError("it ended with code " + process.exitValue() + ": " + messages());
        }
        return Files.readString(results);
    }

    @Override
    public void close() {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }
}
