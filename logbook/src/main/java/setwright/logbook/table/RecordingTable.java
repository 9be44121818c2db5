package setwright.logbook.table;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.sqlobject.customizer.Bind;
import org.jdbi.v3.sqlobject.customizer.BindMethods;
import org.jdbi.v3.sqlobject.statement.SqlQuery;
import setwright.logbook.row.RecordingRow;

/** Recordings. */
public interface RecordingTable {
    /** Adds one; returns its id. */
    @SqlQuery(
            "INSERT INTO recording (name, source_digest, file, file_digest, rate_hz, samples, channels, remarks, added_at)"
                    + " VALUES (:name, :sourceDigest, :file, :fileDigest, :rateHz, :samples, :channels, :remarks, :addedAt) RETURNING id")
    long add(@BindMethods RecordingRow recording);

    /** Returns the recording that came from a file of this digest. */
    @SqlQuery("SELECT * FROM recording WHERE source_digest = :digest")
    Optional<RecordingRow> from(@Bind("digest") String digest);

    /** Returns a recording. */
    @SqlQuery("SELECT * FROM recording WHERE id = :id")
    RecordingRow get(@Bind("id") long id);

    /** Returns all, in the order in which they came. */
    @SqlQuery("SELECT * FROM recording ORDER BY id")
    List<RecordingRow> all();
}
