package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import org.jdbi.v3.sqlobject.statement.SqlUpdate;
import org.jdbi.v3.sqlobject.statement.UseRowMapper;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.StintRow;

/** Stints. Their ids are the numbers that people use. */
public interface StintTable {
    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO stint"
            + " (recording_id, car_id, setup_id, driver_id, circuit_id, laps, good_laps, best_s, mean_s,"
            + " tyre_age_laps, track_celsius, fuel_start_kg, good_order, added_at)"
            + " VALUES (:recordingId, :carId, :setupId, :driverId, :circuitId, :laps, :goodLaps, :bestS, :meanS,"
            + " :tyreAgeLaps, :trackCelsius, :fuelStartKg, CASE WHEN :goodOrder THEN 1 ELSE 0 END, :addedAt)"
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

    /** Returns those of a car from a stint on, in order. */
    @SqlQuery("SELECT * FROM stint WHERE id >= :first AND car_id = :car ORDER BY id")
    List<StintRow> since(@Bind("first") long first, @Bind("car") long car);

    /** Returns those of a car on a circuit in which it was in good order, the last first. */
    @SqlQuery("SELECT * FROM stint WHERE car_id = :car AND circuit_id = :circuit AND good_order = 1 ORDER BY id DESC")
    List<StintRow> inGoodOrder(@Bind("car") long car, @Bind("circuit") long circuit);

    /** Returns what a list shows of all of them, in order, in one look at the tables. */
    @SqlQuery(
            "SELECT stint.id, recording.name AS recording, driver.name AS driver, car.name AS car,"
                    + " setup.number AS setup, circuit.name AS circuit, stint.laps, stint.good_laps, stint.best_s, stint.mean_s,"
                    + " stint.good_order, stint.added_at FROM stint JOIN recording ON recording.id = stint.recording_id"
                    + " JOIN driver ON driver.id = stint.driver_id JOIN car ON car.id = stint.car_id"
                    + " JOIN setup ON setup.id = stint.setup_id JOIN circuit ON circuit.id = stint.circuit_id ORDER BY stint.id")
    @UseRowMapper(StintLineMapper.class)
    List<StintLineRow> lines();

    /** Corrects what people said of a stint. */
    @SqlUpdate(
            "UPDATE stint SET driver_id = :driverId, setup_id = :setupId, tyre_age_laps = :tyreAgeLaps,"
                    + " track_celsius = :trackCelsius, fuel_start_kg = :fuelStartKg, good_order = CASE WHEN :goodOrder THEN 1 ELSE 0 END WHERE id = :id")
    void correct(@BindMethods StintRow stint);
}
