package setwright.fleet.summary;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import setwright.fleet.depot.Depot;
import setwright.fleet.summary.Summary.Recordings;

/** Asks all questions. */
public final class Summarizer {
    private static final List<String> DOUBTS = List.of(
            "Recordings of one driver resemble each other: intervals are over drivers, and \"too few\" means fewer than "
                    + Clusters.FEWEST + " of them.",
            "A change that is tried second looks better than it is, because drivers and tracks get better from one run to the next,"
                    + " and because a problem that was the largest once is seldom as large again: hold it against recordings with the"
                    + " same setup, and settle it back to back (setwright trial).",
            "Corners are counted only where all recordings of a circuit share them.");

    private Summarizer() {}

    /**
     * Answers.
     *
     * @param driver   only his recordings
     * @param circuit  only recordings made there
     * @throws IOException when there are no tables
     */
    public static Summary of(SparkSession spark, Depot tables, Optional<String> driver, Optional<String> circuit)
            throws IOException {
        Views views = new Views(spark, tables, driver, circuit);
        Row counts = views.rows("""
                        SELECT count(*), count_if(status = 'judged'), count_if(status = 'not enough evidence'),
                               count_if(status = 'failed'), count(DISTINCT CASE WHEN status = 'judged' THEN driver END),
                               count(DISTINCT CASE WHEN status = 'judged' THEN circuit END)
                        FROM recordings
                        """).get(0);
        Changes changes = new Changes(views);
        return new Summary(
                Summary.VERSION,
                new Recordings(
                        counts.getLong(0),
                        counts.getLong(1),
                        counts.getLong(2),
                        counts.getLong(3),
                        counts.getLong(4),
                        counts.getLong(5)),
                Problems.all(views),
                Problems.corners(views),
                Drivers.standingOut(views),
                changes.changes(),
                changes.unchanged(),
                DOUBTS);
    }
}
