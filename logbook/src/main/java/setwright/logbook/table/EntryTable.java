package setwright.logbook.table;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.EntryRow;

/** The story. */
public interface EntryTable {
    /** Adds a sentence; returns its id. */
    @SqlQuery("INSERT INTO entry (written_at, kind, car_id, stint_id, words)"
            + " VALUES (:writtenAt, :kind, :carId, :stintId, :words) RETURNING id")
    long add(@BindMethods EntryRow entry);

    /** Returns what was written from one time (inclusive) to another (exclusive), in order. */
    @SqlQuery("SELECT * FROM entry WHERE written_at >= :from AND written_at < :to ORDER BY id")
    List<EntryRow> between(@Bind("from") Instant from, @Bind("to") Instant to);

    /** Returns what was written about a stint, in order. */
    @SqlQuery("SELECT * FROM entry WHERE stint_id = :stint ORDER BY id")
    List<EntryRow> ofStint(@Bind("stint") long stint);

    /** Returns the last one. */
    @SqlQuery("SELECT * FROM entry ORDER BY id DESC LIMIT 1")
    Optional<EntryRow> last();

    /** Returns all, in order. */
    @SqlQuery("SELECT * FROM entry ORDER BY id")
    List<EntryRow> all();

    /**
     * Returns what holds all words of a search, or words that begin like them, in order, on SQLite.
     *
     * @param match  in FTS5's syntax
     */
    @SqlQuery(
            "SELECT * FROM entry WHERE id IN (SELECT rowid FROM entry_text WHERE entry_text MATCH :match) ORDER BY id")
    List<EntryRow> searchSqlite(@Bind("match") String match);

    /**
     * Returns the same on PostgreSQL.
     *
     * @param match  in the syntax of {@code to_tsquery}
     */
    @SqlQuery("SELECT * FROM entry WHERE word_list @@ to_tsquery('simple', :match) ORDER BY id")
    List<EntryRow> searchPostgres(@Bind("match") String match);
}
