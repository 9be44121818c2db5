package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlBatch;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** Verdicts on trials, with what was predicted and measured. */
public interface VerdictTable {
    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO verdict (trial_id, runs, plan_share, verdict, reason, made_at)"
            + " VALUES (:trialId, :runs, :planShare, :verdict, :reason, :madeAt) RETURNING id")
    long add(@BindMethods VerdictRow verdict);

    /** Adds its effects. */
    @SqlBatch("INSERT INTO tried_effect (verdict_id, phase, speed, unit, predicted, predicted_low, predicted_high,"
            + " measured, measured_low, measured_high, error)"
            + " VALUES (:verdictId, :phase, :speed, :unit, :predicted, :predictedLow, :predictedHigh,"
            + " :measured, :measuredLow, :measuredHigh, :error)")
    void add(@BindMethods List<TriedEffectRow> effects);

    /** Returns the last verdict on a trial. */
    @SqlQuery("SELECT * FROM verdict WHERE trial_id = :trial ORDER BY id DESC LIMIT 1")
    Optional<VerdictRow> last(@Bind("trial") long trial);

    /** Returns all verdicts on a trial, in order. */
    @SqlQuery("SELECT * FROM verdict WHERE trial_id = :trial ORDER BY id")
    List<VerdictRow> ofTrial(@Bind("trial") long trial);

    /** Returns the verdict on a trial after these runs. */
    @SqlQuery("SELECT * FROM verdict WHERE trial_id = :trial AND runs = :runs")
    Optional<VerdictRow> after(@Bind("trial") long trial, @Bind("runs") String runs);

    /** Returns what a verdict measured, lap time first. */
    @SqlQuery("SELECT * FROM tried_effect WHERE verdict_id = :verdict ORDER BY unit DESC, phase, speed")
    List<TriedEffectRow> effects(@Bind("verdict") long verdict);
}
