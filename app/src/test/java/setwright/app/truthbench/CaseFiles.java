package setwright.app.truthbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.core.simulation.logger.LoggedTable;

/**
 * A recorded stint as its user has it.
 *
 * @param recording  laps
 * @param sheet      of the car
 */
record CaseFiles(Path recording, Path sheet) {
    /** Writes them. */
    static CaseFiles write(Path folder, String name, BenchCase benchCase, LoggedTable table) throws IOException {
        Path recording = folder.resolve(name + (benchCase.csv().gzip() ? ".csv.gz" : ".csv"));
        Path sheet = folder.resolve(name.equals("stint1") ? "car.yaml" : name + "-car.yaml");
        RecordingWriter.write(recording, table, benchCase.csv());
        Files.writeString(
                sheet, SheetCopy.with(benchCase.car().name(), benchCase.car().sheetText(), benchCase.changes()));
        return new CaseFiles(recording, sheet);
    }
}
