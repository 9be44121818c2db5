import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Copies the program's libraries without native code for other platforms: {@code java .ci/Slim.java FROM TO}.
 *
 * <p>DuckDB's driver looks beside its jar when the jar holds no native library, so the one of this platform is put there: there
 * is then nothing to unpack at each start. SQLite's driver unpacks its own, a megabyte; it keeps this platform's only.
 */
final class Slim {
    private static final String DUCKDB = "libduckdb_java.so_";
    private static final String SQLITE = "org/sqlite/native/";

    public static void main(String[] folders) throws IOException {
        Path to = Files.createDirectories(Path.of(folders[1]));
        List<Path> libraries;
        try (Stream<Path> entries = Files.list(Path.of(folders[0]))) {
            libraries = entries.sorted().toList();
        }
        for (Path library : libraries) {
            String name = library.getFileName().toString();
            Path copy = to.resolve(name);
            if (name.startsWith("duckdb_jdbc-")) {
                String own = DUCKDB + system("windows", "macos", "linux") + "_" + machine("amd64", "arm64");
                takeOut(library, own, to.resolve(own));
                copyWithout(library, copy, entry -> entry.startsWith(DUCKDB));
            } else if (name.startsWith("sqlite-jdbc-")) {
                String own = SQLITE + system("Windows", "Mac", "Linux") + "/" + machine("x86_64", "aarch64") + "/";
                copyWithout(library, copy, entry -> entry.startsWith(SQLITE) && !entry.startsWith(own));
            } else {
                Files.copy(library, copy);
            }
        }
    }

    private static String system(String windows, String mac, String linux) {
        String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        return name.startsWith("windows") ? windows : name.startsWith("mac") ? mac : linux;
    }

    private static String machine(String intel, String arm) {
        String machine = System.getProperty("os.arch");
        return List.of("amd64", "x86_64").contains(machine) ? intel : machine.equals("aarch64") ? arm : machine;
    }

    private static void takeOut(Path jar, String entry, Path file) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            ZipEntry found = zip.getEntry(entry);
            if (found == null) {
                System.err.println(jar.getFileName() + " has no " + entry + ": the program cannot read tables here");
                System.exit(1);
            }
            try (InputStream in = zip.getInputStream(found)) {
                Files.copy(in, file);
            }
        }
    }

    private static void copyWithout(Path jar, Path copy, Predicate<String> unwanted) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile());
                OutputStream file = Files.newOutputStream(copy);
                ZipOutputStream out = new ZipOutputStream(file)) {
            List<? extends ZipEntry> wanted =
                    zip.stream().filter(entry -> !unwanted.test(entry.getName())).toList();
            for (ZipEntry entry : wanted) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTime(entry.getTime());
                out.putNextEntry(same);
                try (InputStream in = zip.getInputStream(entry)) {
                    in.transferTo(out);
                }
                out.closeEntry();
            }
        }
    }
}
