package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import setwright.app.files.WholeFile;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.row.RecordingRow;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Takes a whole logbook out in open formats: a JSON file for each table, and the recordings as Parquet. */
public final class Exporting {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private final Logbook logbook;

    /** Makes one for a logbook. */
    public Exporting(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * Writes everything into an empty folder, or one that is made.
     *
     * @return how many rows were written
     * @throws IOException when the folder holds anything, or cannot be written to
     */
    public long export(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw new IOException(folder + " is not empty. Name a new folder");
            }
        }
        long count = 0;
        for (String table : Tables.NAMES) {
            List<Map<String, Object>> rows = logbook.look(tables -> tables.rows(table));
            WholeFile.write(folder.resolve(table + ".json"), MAPPER.writeValueAsString(rows) + "\n");
            count += rows.size();
        }
        List<RecordingRow> recordings =
                logbook.look(tables -> tables.recordings().all());
        if (!recordings.isEmpty()) {
            Path copies = Files.createDirectories(folder.resolve("recordings"));
            for (RecordingRow recording : recordings) {
                Files.copy(logbook.recordings().resolve(recording.file()), copies.resolve(recording.file()));
            }
        }
        return count;
    }
}
