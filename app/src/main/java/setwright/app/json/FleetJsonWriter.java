package setwright.app.json;

import java.util.List;
import java.util.OptionalDouble;
import setwright.app.fleet.FleetCount;

/** Writes what came of a run over many recordings as JSON of version 1: docs/fleet.schema.json. */
public final class FleetJsonWriter {
    private static final int VERSION = 1;

    private FleetJsonWriter() {}

    record Run(
            int version,
            int recordings,
            int done_before,
            int judged,
            int not_enough_evidence,
            int failed,
            int left,
            OptionalDouble seconds,
            List<FleetCount.Failure> failures) {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(FleetCount count) {
        return Numbers.text(new Run(
                VERSION,
                count.recordings(),
                count.before(),
                count.judged(),
                count.notEnough(),
                count.failed(),
                count.left(),
                Numbers.known(count.seconds()),
                count.failures()));
    }
}
