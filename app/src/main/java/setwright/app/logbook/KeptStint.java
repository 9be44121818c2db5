package setwright.app.logbook;

import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.DriverRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/**
 * A stint of the logbook with all that it points to.
 *
 * @param stint      its own figures
 * @param recording  that it was cut from
 * @param car        that was driven
 * @param setup      that was on the car
 * @param driver     who drove
 * @param circuit    where
 */
public record KeptStint(
        StintRow stint, RecordingRow recording, CarRow car, SetupRow setup, DriverRow driver, CircuitRow circuit) {

    static KeptStint of(Tables tables, StintRow stint) {
        return new KeptStint(
                stint,
                tables.recordings().get(stint.recordingId()),
                tables.cars().get(stint.carId()),
                tables.setups().get(stint.setupId()),
                tables.drivers().get(stint.driverId()),
                tables.circuits().get(stint.circuitId()));
    }

    /** Returns the stint of that number; without a number the last one. */
    static KeptStint find(Tables tables, Optional<Long> number) {
        StintRow last = tables.stints()
                .last()
                .orElseThrow(() -> new LogbookProblem(
                        "the logbook has no stint yet. Read a recording into it: setwright add FILE --car SHEET."));
        return of(
                tables,
                number.isEmpty()
                        ? last
                        : tables.stints()
                                .find(number.get())
                                .orElseThrow(() -> new LogbookProblem("there is no stint " + number.get()
                                        + " in the logbook. The last one is stint " + last.id() + ".")));
    }

    /** Returns its number. */
    public long number() {
        return stint.id();
    }

    /** Tells whether it has laps enough for others to be held against it. */
    public boolean canBeBaseline() {
        return stint.goodLaps() >= Baseline.FEWEST_LAPS;
    }

    /** Returns what people call it. */
    public String name() {
        return "stint " + number();
    }
}
