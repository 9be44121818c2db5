package setwright.core.circuit.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Centre lines of real closed circuits, kept outside the repository; their own notes give length and direction.
 *
 * <p>Looked for in the folder named by the system property {@code setwright.data}, else in {@code shared/data} beside any
 * folder above the working one.
 */
final class SharedCircuits {
    private static final Pattern ROW = Pattern.compile(
            "\\| (circuit-\\d+\\.csv) \\| \\w+ \\| (\\d+) \\| \\d+ \\|[^|]*\\|[^|]*\\|[^|]*\\| ([+-][\\d.]+) \\|.*");

    private SharedCircuits() {}

    /**
     * A circuit as published.
     *
     * @param name     of its file
     * @param lengthM  as its notes give it
     * @param turns    whole turns in a lap, left positive
     * @param points   places of the centre line, m
     */
    record Published(String name, double lengthM, double turns, List<double[]> points) {}

    static List<Published> all() throws IOException {
        Optional<Path> folder = folder();
        List<Published> circuits = new ArrayList<>();
        if (folder.isEmpty()) {
            return circuits;
        }
        for (String line : Files.readAllLines(folder.get().resolve("README.md"))) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                circuits.add(new Published(
                        row.group(1),
                        Double.parseDouble(row.group(2)),
                        Double.parseDouble(row.group(3)),
                        points(folder.get().resolve(row.group(1)))));
            }
        }
        return circuits;
    }

    private static Optional<Path> folder() {
        String given = System.getProperty("setwright.data");
        if (given != null) {
            return Optional.of(Path.of(given, "circuits")).filter(Files::isDirectory);
        }
        for (Path above = Path.of("").toAbsolutePath(); above != null; above = above.getParent()) {
            Path found = above.resolve("shared/data/circuits");
            if (Files.isDirectory(found)) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private static List<double[]> points(Path file) throws IOException {
        List<double[]> points = new ArrayList<>();
        List<String> lines = Files.readAllLines(file);
        for (String line : lines.subList(1, lines.size())) {
            if (!line.isBlank() && !line.startsWith("#") && !line.startsWith("x")) {
                String[] cells = line.split(",");
                points.add(new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])});
            }
        }
        return points;
    }
}
