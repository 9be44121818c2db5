package setwright.benchmarks.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Parts of the table that can be measured by themselves. */
public enum Group {
    /** Commands that start and end at once. */
    START,
    /** A file into the logbook, its map, its reader. */
    IMPORT,
    /** Channels out of the logbook, and what they are judged by. */
    DIAGNOSIS,
    /** Replay and laps. */
    REPLAY,
    /** The page. */
    PAGE,
    /** Numerical kernels. */
    KERNELS;

    /** Returns its name as people give it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns all names. */
    public static String words() {
        return Arrays.stream(values()).map(Group::word).collect(Collectors.joining(", "));
    }
}
