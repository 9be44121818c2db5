package setwright.fleet.spark;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;

/** The jars that a cluster does not have: the program's own, and the libraries that it names in its jar. */
final class OurJars {
    private OurJars() {}

    /**
     * Returns their places, as Spark wants them; none when the program is not packed into jars.
     *
     * @param classPath  of the program
     */
    static List<String> sent(String classPath) {
        List<Path> all = Arrays.stream(classPath.split(File.pathSeparator, -1))
                .map(Path::of)
                .filter(path -> path.toString().endsWith(".jar") && Files.isRegularFile(path))
                .toList();
        Set<String> named = new HashSet<>();
        for (Path jar : all) {
            libraries(jar).ifPresent(names -> {
                named.add(String.valueOf(jar.getFileName()));
                named.addAll(names);
            });
        }
        return all.stream()
                .filter(jar -> named.contains(String.valueOf(jar.getFileName()))
                        || String.valueOf(jar.getFileName()).startsWith("setwright-"))
                .map(jar -> jar.toAbsolutePath().toUri().toString())
                .toList();
    }

    /** The libraries of the program's jar; empty for any other. */
    private static Optional<List<String>> libraries(Path jar) {
        if (!String.valueOf(jar.getFileName()).startsWith("setwright")) {
            return Optional.empty();
        }
        try (JarFile file = new JarFile(jar.toFile())) {
            Attributes head = file.getManifest().getMainAttributes();
            String names = head.getValue(Attributes.Name.CLASS_PATH);
            return names == null
                    ? Optional.empty()
                    : Optional.of(Arrays.stream(names.split(" ", -1))
                            .map(name -> name.substring(name.lastIndexOf('/') + 1))
                            .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
