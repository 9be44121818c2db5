package setwright.fleet.tree;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Listed;

/** Finds the recordings of a tree and what goes with them. */
public final class TreeReader {
    /** Endings of the kinds of files that {@link setwright.intake.source.Formats} reads, longer ones first. */
    private static final List<String> ENDINGS =
            List.of(".csv.gz", ".tsv.gz", ".csv", ".tsv", ".parquet", ".mf4", ".mdf", ".gpx", ".nmea");

    private static final String SHEET = "car.yaml";
    private static final String MAP = "map.yaml";
    private static final String CIRCUIT = "circuit.json";

    private TreeReader() {}

    /**
     * Lists the recordings, sorted by path. Files and folders whose names begin with a dot or an underscore are left out.
     *
     * @throws IOException when a folder cannot be read
     */
    public static List<Recorded> read(Depot tree) throws IOException {
        List<Listed> files =
                tree.list("").stream().filter(file -> !hidden(file.name())).toList();
        Set<String> names = new HashSet<>();
        files.forEach(file -> names.add(file.name()));
        List<Recorded> found = new ArrayList<>();
        for (Listed file : files) {
            String stem = stem(file.name());
            if (!stem.isEmpty()) {
                found.add(new Recorded(
                        file.name(),
                        file.bytes(),
                        file.modifiedMs(),
                        labels(file.name()),
                        names.contains(stem + "." + SHEET) ? stem + "." + SHEET : nearest(file.name(), SHEET, names),
                        names.contains(stem + "." + MAP) ? stem + "." + MAP : nearest(file.name(), MAP, names),
                        nearest(file.name(), CIRCUIT, names)));
            }
        }
        return found;
    }

    private static boolean hidden(String path) {
        return path.matches("(?s)(.*/)?[._].*");
    }

    /** The path without its ending; empty when that is none of a recording. */
    private static String stem(String path) {
        String small = path.toLowerCase(Locale.ROOT);
        return ENDINGS.stream()
                .filter(small::endsWith)
                .findFirst()
                .map(ending -> path.substring(0, path.length() - ending.length()))
                .orElse("");
    }

    private static Labels labels(String path) {
        Labels labels = Labels.NONE;
        List<String> parts = List.of(path.split("/", -1));
        for (String folder : parts.subList(0, parts.size() - 1)) {
            Labels before = labels;
            labels = PartName.read(folder)
                    .map(part -> before.with(part.key().toLowerCase(Locale.ROOT), part.value()))
                    .orElse(before);
        }
        return labels;
    }

    /** In the folder of a file or the nearest one above. */
    private static String nearest(String path, String name, Set<String> names) {
        String folder = path;
        while (folder.contains("/")) {
            folder = folder.substring(0, folder.lastIndexOf('/'));
            if (names.contains(folder + "/" + name)) {
                return folder + "/" + name;
            }
        }
        return names.contains(name) ? name : "";
    }
}
