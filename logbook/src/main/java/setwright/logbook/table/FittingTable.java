package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.FittingRow;

/** Which setup was on a car, and when. */
public interface FittingTable {
    /** Puts a setup onto its car; returns the id. */
    @SqlQuery("INSERT INTO fitting (setup_id, undoes, why, fitted_at)"
            + " VALUES (:setupId, CASE WHEN :undoes THEN 1 ELSE 0 END, :why, :fittedAt) RETURNING id")
    long add(@BindMethods FittingRow fitting);

    /** Returns all of a car, in order. */
    @SqlQuery("SELECT fitting.* FROM fitting JOIN setup ON setup.id = fitting.setup_id"
            + " WHERE setup.car_id = :car ORDER BY fitting.id")
    List<FittingRow> ofCar(@Bind("car") long car);

    /** Returns what is on a car now. */
    @SqlQuery("SELECT fitting.* FROM fitting JOIN setup ON setup.id = fitting.setup_id"
            + " WHERE setup.car_id = :car ORDER BY fitting.id DESC LIMIT 1")
    Optional<FittingRow> now(@Bind("car") long car);
}
