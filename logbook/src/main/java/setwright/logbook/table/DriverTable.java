package setwright.logbook.table;

import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.DriverRow;

/** Drivers. */
public interface DriverTable {
    /** Adds one; returns the id. */
    @SqlQuery("INSERT INTO driver (name) VALUES (:name) RETURNING id")
    long add(@Bind("name") String name);

    /** Returns the driver of that name. */
    @SqlQuery("SELECT * FROM driver WHERE name = :name")
    Optional<DriverRow> named(@Bind("name") String name);

    /** Returns the driver of that name, new or known. */
    default DriverRow knownOrNew(String name) {
        return named(name).orElseGet(() -> get(add(name)));
    }

    /** Returns a driver. */
    @SqlQuery("SELECT * FROM driver WHERE id = :id")
    DriverRow get(@Bind("id") long id);
}
