package setwright.logbook;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A PostgreSQL server of the tests' own, on loopback, gone afterwards. Debian's package {@code postgresql} holds the programs. */
public final class PostgresServer implements AutoCloseable {
    private static final Path DEBIAN = Path.of("/usr/lib/postgresql");
    private static final String USER = "pit";

    private final Path programs;
    private final Path folder;
    private final int port;

    private PostgresServer(Path programs, Path folder, int port) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    /** Returns the folder of the newest server programs; empty where none are installed. */
    private static Optional<Path> programs() throws IOException {
        if (!Files.isDirectory(DEBIAN)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(DEBIAN)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.comparing(Path::toString));
        }
    }

    /** Starts one. Without PostgreSQL the test is skipped, unless CI=true, where it then fails. */
    public static PostgresServer start() throws IOException, InterruptedException {
        Optional<Path> programs = programs();
        if (!"true".equals(System.getenv("CI"))) {
            assumeTrue(programs.isPresent(), "skipped: PostgreSQL is not installed (Debian's package postgresql)");
        }
        return start(programs.orElseThrow(() -> new AssertionError("CI needs PostgreSQL")));
    }

    private static PostgresServer start(Path programs) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("setwright-postgres");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        PostgresServer server = new PostgresServer(programs, folder, port);
        if (root()) {
            run(List.of("chown", "postgres", folder.toString()));
        }
        server.call(
                "initdb",
                "-D",
                server.data(),
                "-U",
                USER,
                "-A",
                "trust",
                "-E",
                "UTF8",
                "--no-sync",
                "--locale=C.UTF-8");
        server.call(
                "pg_ctl",
                "-D",
                server.data(),
                "-w",
                "-s",
                "-l",
                folder.resolve("server.log").toString(),
                "-o",
                "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c fsync=off",
                "start");
        return server;
    }

    /** Makes an empty database; returns the address of a logbook in it. */
    public String database(String name) throws IOException, InterruptedException {
        call("createdb", "-h", "127.0.0.1", "-p", String.valueOf(port), "-U", USER, name);
        return "postgres://" + USER + "@127.0.0.1:" + port + "/" + name;
    }

    @Override
    public void close() throws IOException, InterruptedException {
        call("pg_ctl", "-D", data(), "-m", "immediate", "-s", "stop");
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private static boolean root() {
        return System.getProperty("user.name").equals("root");
    }

    /** The server refuses to run as root. */
    private void call(String program, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        if (root()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        run(command);
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("setwright-postgres", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException(command + " failed: " + Files.readString(said));
            }
        } finally {
            Files.delete(said);
        }
    }
}
