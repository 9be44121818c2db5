package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.StintRow;

/** Stints. Their ids are the numbers that people use. */
public interface StintTable {
    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO stint"
            + " (recording_id, car_id, setup_id, driver_id, circuit_id, laps, good_laps, best_s, mean_s,"
            + " tyre_age_laps, track_celsius, added_at)"
            + " VALUES (:recordingId, :carId, :setupId, :driverId, :circuitId, :laps, :goodLaps, :bestS, :meanS,"
            + " :tyreAgeLaps, :trackCelsius, :addedAt)"
            + " RETURNING id")
    long add(@BindMethods StintRow stint);

    /** Returns the stint of that number. */
    @SqlQuery("SELECT * FROM stint WHERE id = :id")
    Optional<StintRow> find(@Bind("id") long id);

    /** Returns the stint that a recording became. */
    @SqlQuery("SELECT * FROM stint WHERE recording_id = :recording")
    Optional<StintRow> ofRecording(@Bind("recording") long recording);

    /** Returns the last one. */
    @SqlQuery("SELECT * FROM stint ORDER BY id DESC LIMIT 1")
    Optional<StintRow> last();

    /** Returns all, in order. */
    @SqlQuery("SELECT * FROM stint ORDER BY id")
    List<StintRow> all();

    /** Returns those of one driver in one car on one circuit, from a stint on, in order. */
    @SqlQuery(
            "SELECT * FROM stint WHERE id >= :first AND car_id = :car AND driver_id = :driver AND circuit_id = :circuit"
                    + " ORDER BY id")
    List<StintRow> since(
            @Bind("first") long first,
            @Bind("car") long car,
            @Bind("driver") long driver,
            @Bind("circuit") long circuit);
}
