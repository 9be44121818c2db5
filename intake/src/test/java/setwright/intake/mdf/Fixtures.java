package setwright.intake.mdf;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The files that the script beside them wrote, and what they hold. */
final class Fixtures {
    private Fixtures() {}

    static Path folder() {
        try {
            return Path.of(Objects.requireNonNull(Fixtures.class.getResource("sorted.mf4"))
                            .toURI())
                    .getParent();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".mf4"))
                    .map(name -> name.substring(0, name.length() - 4))
                    .sorted()
                    .toList();
        }
    }

    static Path file(String name) {
        return folder().resolve(name + ".mf4");
    }

    static JsonNode expected(String name) throws IOException {
        return new ObjectMapper().readTree(Files.readString(folder().resolve(name + ".json")));
    }
}
