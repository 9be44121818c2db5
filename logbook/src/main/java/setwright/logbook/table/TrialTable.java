package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlBatch;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import org.jdbi.v3.sqlobject.statement.SqlUpdate;
import setwright.logbook.row.TrialAsideRow;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;

/** Trials and the items that they change. */
public interface TrialTable {
    /** Opens one; returns its id. */
    @SqlQuery(
            "INSERT INTO trial (car_id, driver_id, circuit_id, first_stint_id, before_id, change_words, together, plan,"
                    + " laps_a_run, state, opened_at)"
                    + " VALUES (:carId, :driverId, :circuitId, :firstStintId, :beforeId, :changeWords, :together, :plan,"
                    + " :lapsARun, :state, :openedAt) RETURNING id")
    long add(@BindMethods TrialRow trial);

    /** Adds its items. */
    @SqlBatch("INSERT INTO trial_item (trial_id, item, from_value, to_value, unit)"
            + " VALUES (:trialId, :item, :fromValue, :toValue, :unit)")
    void add(@BindMethods List<TrialItemRow> items);

    /** Ends one. */
    @SqlUpdate("UPDATE trial SET state = 'over' WHERE id = :id")
    void end(@Bind("id") long id);

    /** Returns the trial of that number. */
    @SqlQuery("SELECT * FROM trial WHERE id = :id")
    Optional<TrialRow> find(@Bind("id") long id);

    /** Returns the trial that is under way with a car. */
    @SqlQuery("SELECT * FROM trial WHERE car_id = :car AND state = 'open' ORDER BY id DESC LIMIT 1")
    Optional<TrialRow> open(@Bind("car") long car);

    /** Returns all trials of a car, in order. */
    @SqlQuery("SELECT * FROM trial WHERE car_id = :car ORDER BY id")
    List<TrialRow> ofCar(@Bind("car") long car);

    /** Leaves a stint out of a trial. */
    @SqlUpdate("INSERT INTO trial_aside (trial_id, stint_id, why) VALUES (:trialId, :stintId, :why)"
            + " ON CONFLICT (trial_id, stint_id) DO UPDATE SET why = excluded.why")
    void leaveOut(@BindMethods TrialAsideRow aside);

    /** Returns what was left out of a trial. */
    @SqlQuery("SELECT * FROM trial_aside WHERE trial_id = :trial ORDER BY stint_id")
    List<TrialAsideRow> leftOut(@Bind("trial") long trial);

    /** Returns what a trial changes. */
    @SqlQuery("SELECT * FROM trial_item WHERE trial_id = :trial")
    List<TrialItemRow> items(@Bind("trial") long trial);
}
