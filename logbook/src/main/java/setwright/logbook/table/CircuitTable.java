package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.CircuitRow;

/** Circuits. */
public interface CircuitTable {
    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO circuit (name, document, length_m, added_at)"
            + " VALUES (:name, :document, :lengthM, :addedAt) RETURNING id")
    long add(@BindMethods CircuitRow circuit);

    /** Returns the circuit of that name. */
    @SqlQuery("SELECT * FROM circuit WHERE name = :name")
    Optional<CircuitRow> named(@Bind("name") String name);

    /** Returns a circuit. */
    @SqlQuery("SELECT * FROM circuit WHERE id = :id")
    CircuitRow get(@Bind("id") long id);

    /** Returns all, the one driven last first. */
    @SqlQuery("SELECT circuit.* FROM circuit LEFT JOIN stint ON stint.circuit_id = circuit.id"
            + " GROUP BY circuit.id ORDER BY MAX(COALESCE(stint.id, 0)) DESC, circuit.id")
    List<CircuitRow> lastDrivenFirst();
}
