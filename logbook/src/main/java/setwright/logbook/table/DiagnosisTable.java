package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlBatch;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import org.jdbi.v3.sqlobject.statement.SqlUpdate;
import setwright.logbook.row.DiagnosisRow;
import setwright.logbook.row.FindingRow;

/** Diagnoses with their findings; a stint has one, the latest. */
public interface DiagnosisTable {
    /** Forgets the diagnosis of a stint and its findings. */
    @SqlUpdate("DELETE FROM diagnosis WHERE stint_id = :stint")
    void remove(@Bind("stint") long stint);

    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO diagnosis (stint_id, verdict, repeatable, made_at)"
            + " VALUES (:stintId, :verdict, CASE WHEN :repeatable THEN 1 ELSE 0 END, :madeAt) RETURNING id")
    long add(@BindMethods DiagnosisRow diagnosis);

    /** Adds findings. */
    @SqlBatch("INSERT INTO finding (diagnosis_id, place, phase, speed, balance, set_off_by, cause, corners, lap_share,"
            + " lap_wide, probability, price_s, price_low_s, price_high_s)"
            + " VALUES (:diagnosisId, :place, :phase, :speed, :balance, :setOffBy, :cause, :corners, :lapShare,"
            + " CASE WHEN :lapWide THEN 1 ELSE 0 END, :probability, :priceS, :priceLowS, :priceHighS)")
    void add(@BindMethods List<FindingRow> findings);

    /** Returns the diagnosis of a stint. */
    @SqlQuery("SELECT * FROM diagnosis WHERE stint_id = :stint")
    Optional<DiagnosisRow> ofStint(@Bind("stint") long stint);

    /** Returns the findings of a diagnosis, ranked. */
    @SqlQuery("SELECT * FROM finding WHERE diagnosis_id = :diagnosis ORDER BY place")
    List<FindingRow> findings(@Bind("diagnosis") long diagnosis);
}
