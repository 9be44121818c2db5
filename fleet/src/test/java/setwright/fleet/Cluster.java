package setwright.fleet;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A standalone cluster on this machine: Spark's own master and one worker with one core, each a process of its own. Its installation has Spark's jars and
 * none of the program's, so what the program needs it has to send.
 */
final class Cluster implements AutoCloseable {
    private static final String HERE = "127.0.0.1";
    /** Libraries that the program's jar names and that Spark cannot do without, either. */
    private static final Pattern SHARED =
            Pattern.compile("(slf4j-api|jackson-annotations|commons-(io|logging)|jakarta\\..*|checker-qual)-.*");

    private final Path home;
    private final int port;
    private final List<Process> processes = new ArrayList<>();

    Cluster(Path home) throws IOException, InterruptedException {
        this.home = home;
        install();
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getByName(HERE))) {
            port = free.getLocalPort();
        }
        try {
            start("master", "org.apache.spark.deploy.master.Master", "--host", HERE, "--port", String.valueOf(port));
            waitFor("master", "I have been elected leader");
            start(
                    "worker",
                    "org.apache.spark.deploy.worker.Worker",
                    "--host",
                    HERE,
                    "--cores",
                    "1",
                    "--memory",
                    "2g",
                    "--work-dir",
                    home.resolve("work").toString(),
                    address());
            waitFor("worker", "Successfully registered with master");
        } catch (IOException | InterruptedException | RuntimeException | AssertionError e) {
            close();
            throw e;
        }
    }

    String address() {
        return "spark://" + HERE + ":" + port;
    }

    /** Returns what the worker has fetched for its programs. */
    List<String> fetched() throws IOException {
        try (Stream<Path> all = Files.walk(home.resolve("work"))) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar"))
                    .toList();
        }
    }

    /** Links to Spark's jars. */
    private void install() throws IOException {
        Set<String> ours = new HashSet<>();
        List<Path> jars = new ArrayList<>();
        for (String entry : Program.classPath().split(File.pathSeparator)) {
            if (entry.endsWith(".jar")) {
                jars.add(Path.of(entry));
            }
            if (entry.endsWith("setwright.jar")) {
                try (JarFile program = new JarFile(entry)) {
                    Stream.of(program.getManifest()
                                    .getMainAttributes()
                                    .getValue("Class-Path")
                                    .split(" "))
                            .map(name -> name.replaceFirst(".*/", ""))
                            .filter(name -> !SHARED.matcher(name).matches())
                            .forEach(ours::add);
                }
            }
        }
        if (ours.isEmpty()) {
            throw new AssertionError("the program's jar is not on the class path");
        }
        Files.createDirectories(home.resolve("jars"));
        Files.createFile(home.resolve("RELEASE"));
        for (Path jar : jars) {
            String name = jar.getFileName().toString();
            if (!ours.contains(name) && !name.startsWith("setwright")) {
                Files.createSymbolicLink(home.resolve("jars").resolve(name), jar);
            }
        }
    }

    private void start(String name, String main, String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-cp",
                home.resolve("jars") + "/*",
                main,
                "--webui-port",
                "0"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(home.resolve(name + ".log").toFile());
        builder.environment().put("SPARK_HOME", home.toString());
        builder.environment().put("SPARK_SCALA_VERSION", "2.13");
        builder.environment().put("SPARK_LOCAL_IP", HERE);
        processes.add(builder.start());
    }

    private void waitFor(String name, String words) throws IOException, InterruptedException {
        Path log = home.resolve(name + ".log");
        while (!Files.readString(log).contains(words)) {
            if (processes.stream().anyMatch(one -> !one.isAlive())) {
                throw new AssertionError(name + " ended: " + Files.readString(log));
            }
            Thread.sleep(50);
        }
    }

    /** What executors wrote, for whoever has to find out why something failed. */
    String logs() throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> all = Files.walk(home)) {
            for (Path log : all.filter(file -> file.toString().matches(".*(\\.log|stderr)"))
                    .toList()) {
                text.append(log.getFileName()).append(":\n").append(Files.readString(log));
            }
        }
        return text.toString();
    }

    @Override
    public void close() throws IOException {
        for (Process process : processes) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().onExit().join();
        }
        try (Stream<Path> links = Files.list(home.resolve("jars"))) {
            for (Path link : links.toList()) {
                Files.delete(link);
            }
        }
    }
}
