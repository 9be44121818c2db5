package setwright.logbook.table;

import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import org.jdbi.v3.sqlobject.statement.SqlUpdate;
import setwright.logbook.row.ProposalRow;

/** Proposals; a stint has one, the latest. */
public interface ProposalTable {
    /** Forgets the proposal of a stint. */
    @SqlUpdate("DELETE FROM proposal WHERE stint_id = :stint")
    void remove(@Bind("stint") long stint);

    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO proposal (stint_id, item, from_value, to_value, unit, reason, made_at)"
            + " VALUES (:stintId, :item, :fromValue, :toValue, :unit, :reason, :madeAt) RETURNING id")
    long add(@BindMethods ProposalRow proposal);

    /** Returns the proposal of a stint. */
    @SqlQuery("SELECT * FROM proposal WHERE stint_id = :stint")
    Optional<ProposalRow> ofStint(@Bind("stint") long stint);
}
