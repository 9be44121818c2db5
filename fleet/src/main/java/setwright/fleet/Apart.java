package setwright.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import setwright.app.failure.Trouble;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetRequest;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.spark.WorkersHome;

/*
 * Design note. Spark finds the home of workers in the environment of the process that starts them, and a process cannot change its own. So a
 * run with workers goes to a process of its own, with that home in a temporary folder, where everything that workers leave behind goes,
 * too.
 */

/** A run in another process. */
final class Apart {
    /** What came of it: one of the two. */
    private record Result(List<FleetCount> count, String trouble) implements Serializable {}

    private Apart() {}

    static FleetCount diagnose(FleetRequest request) throws IOException {
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-workers")) {
            Path asked = folder.path().resolve("asked");
            Path answered = folder.path().resolve("answered");
            write(asked, request);
            Process process = start(folder.path(), asked, answered);
            Thread stop = new Thread(process::destroy, "stop with it");
            Runtime.getRuntime().addShutdownHook(stop);
            int code = process.waitFor();
            Runtime.getRuntime().removeShutdownHook(stop);
            if (!Files.exists(answered)) {
                throw new IOException("the process of the run ended with code " + code
                        + " before it was done. Start it again; what is finished is kept");
            }
            Result result = (Result) read(answered);
            if (result.count().isEmpty()) {
                throw new IOException(result.trouble().replaceFirst("\\.$", ""));
            }
            return result.count().get(0);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("the run was interrupted. Start it again; what is finished is kept", e);
        }
    }

    private static Process start(Path home, Path asked, Path answered) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                // An agent or an archive of classes is for the process that it was given to.
                .filter(option -> !option.startsWith("-javaagent") && !option.startsWith("-agentlib"))
                .filter(option -> !option.startsWith("-XX:SharedArchiveFile"))
                .forEach(command::add);
        command.addAll(List.of(
                "-cp",
                System.getProperty("java.class.path"),
                Apart.class.getName(),
                asked.toString(),
                answered.toString()));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        WorkersHome.prepare(home, builder.environment());
        return builder.start();
    }

    /** The other process: reads what is asked, and writes what came of it. */
    public static void main(String[] arguments) throws IOException {
        endWithParent();
        FleetRequest request = (FleetRequest) read(Path.of(arguments[0]));
        Result result;
        try {
            result = new Result(
                    List.of(new SparkFleet().diagnose(request, words -> System.err.println("setwright: " + words))),
                    "");
        } catch (IOException | RuntimeException e) {
            result = new Result(List.of(), Trouble.of(e).message());
        }
        write(Path.of(arguments[1]), result);
    }

    /** The end of the process that asked closes the pipe, whatever it died of; a run that nobody waits for would keep the next one out. */
    private static void endWithParent() {
        Thread watch = new Thread(
                () -> {
                    try {
                        System.in.transferTo(OutputStream.nullOutputStream());
                    } catch (IOException e) {
                        // as good as its end
                    }
                    System.exit(1);
                },
                "ends with its parent");
        watch.setDaemon(true);
        watch.start();
    }

    private static void write(Path file, Serializable what) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ObjectOutputStream objects = new ObjectOutputStream(out)) {
            objects.writeObject(what);
        }
    }

    private static Object read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                ObjectInputStream objects = new ObjectInputStream(in)) {
            return objects.readObject();
        } catch (ClassNotFoundException e) {
            throw new IOException("the process of the run speaks another version", e);
        }
    }
}
