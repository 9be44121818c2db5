package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.SetupRow;

/** Versions of setups. */
public interface SetupTable {
    /** Adds a version; the database gives it the next number of its car. Returns its id. */
    @SqlQuery("INSERT INTO setup (car_id, number, parent_id, sheet, difference, why, together, made_at)"
            + " SELECT :carId, COALESCE(MAX(number), 0) + 1, :parentId, :sheet, :difference, :why, :together, :madeAt"
            + " FROM setup WHERE car_id = :carId RETURNING id")
    long add(@BindMethods SetupRow setup);

    /** Returns a version. */
    @SqlQuery("SELECT * FROM setup WHERE id = :id")
    SetupRow get(@Bind("id") long id);

    /** Returns a version by its number. */
    @SqlQuery("SELECT * FROM setup WHERE car_id = :car AND number = :number")
    Optional<SetupRow> numbered(@Bind("car") long car, @Bind("number") int number);

    /** Returns all versions of a car, in order. */
    @SqlQuery("SELECT * FROM setup WHERE car_id = :car ORDER BY number")
    List<SetupRow> ofCar(@Bind("car") long car);
}
