package setwright.app.export;

import java.util.List;
import java.util.stream.Stream;

/**
 * A table that can be taken out.
 *
 * @param <R> a row
 */
public interface Table<R> {
    /** Returns what the command line calls it. */
    String name();

    /** Returns what its rows are, one sentence or two. */
    String words();

    /** Returns what it is made from. */
    Source source();

    /** Returns all columns that it can have. */
    List<Column<R>> columns();

    /** Returns the columns that it has for some material; some tables leave out what was not recorded. */
    default List<Column<R>> columns(Material material) {
        return columns();
    }

    /** Returns its rows. */
    Stream<R> rows(Material material);

    /** What a table is made from. */
    enum Source {
        /** One recording or stint. */
        RECORDING(false),
        /** Recordings or stints, one or more. */
        LAPS(false),
        /** The same, with what is proposed after each. */
        PROPOSALS(true),
        /** The whole logbook. */
        LOGBOOK(false);

        private final boolean proposes;

        Source(boolean proposes) {
            this.proposes = proposes;
        }

        /** Tells whether items have to be turned on the laps. */
        public boolean proposes() {
            return proposes;
        }
    }
}
