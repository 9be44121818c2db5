package setwright.logbook.table;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.OptionalDouble;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.StatementContext;
import setwright.logbook.row.StintLineRow;

/** Reads the lines of a list by their places: there may be ten thousand of them. */
public final class StintLineMapper implements RowMapper<StintLineRow> {
    @Override
    public StintLineRow map(ResultSet row, StatementContext context) throws SQLException {
        return new StintLineRow(
                row.getLong(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getInt(5),
                row.getString(6),
                row.getInt(7),
                row.getInt(8),
                known(row, 9),
                known(row, 10),
                row.getBoolean(11),
                TimeText.read(row.getString(12)));
    }

    private static OptionalDouble known(ResultSet row, int place) throws SQLException {
        double value = row.getDouble(place);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
