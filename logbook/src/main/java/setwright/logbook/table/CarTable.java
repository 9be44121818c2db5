package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.CarRow;

/** Cars. */
public interface CarTable {
    /** Adds one; returns its id. */
    @SqlQuery("INSERT INTO car (name, added_at) VALUES (:name, :addedAt) RETURNING id")
    long add(@BindMethods CarRow car);

    /** Returns the car of that name. */
    @SqlQuery("SELECT * FROM car WHERE name = :name")
    Optional<CarRow> named(@Bind("name") String name);

    /** Returns a car. */
    @SqlQuery("SELECT * FROM car WHERE id = :id")
    CarRow get(@Bind("id") long id);

    /** Returns all, in the order in which they came. */
    @SqlQuery("SELECT * FROM car ORDER BY id")
    List<CarRow> all();
}
