package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import setwright.app.logbook.Added;
import setwright.app.logbook.SetupStep;

/** Writes what came into the logbook as JSON of version 1: docs/add.schema.json. */
public final class AddedJsonWriter {
    private static final int VERSION = 1;

    private AddedJsonWriter() {}

    record Document(int version, List<Recording> recordings) {}

    record Recording(
            StintJson stint,
            boolean known,
            @JsonProperty("new_circuit") boolean newCircuit,
            Optional<String> setup,
            List<Aside> aside,
            List<String> corrected,
            List<String> remarks) {}

    record Aside(int lap, String why) {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(List<Added> all) {
        return Numbers.text(new Document(
                VERSION, all.stream().map(AddedJsonWriter::recording).toList()));
    }

    private static Recording recording(Added added) {
        return new Recording(
                StintJson.of(added.stint()),
                added.known(),
                added.newCircuit(),
                added.setup().map(SetupStep::words),
                added.laps().stream()
                        .filter(lap -> !lap.good())
                        .map(lap -> new Aside(lap.number(), lap.why()))
                        .toList(),
                added.calibrations().stream()
                        .map(found -> found.what() + ": " + found.reason())
                        .toList(),
                added.remarks());
    }
}
