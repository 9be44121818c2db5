package setwright.fleet.ledger;

import java.util.List;
import setwright.fleet.tree.PartName;

/** Where what lies among the tables. */
public final class OutLayout {
    /** The ledger: written last, it says that a batch is finished. */
    public static final String LEDGER = "recordings";

    /** All other tables. */
    public static final List<String> TABLES = List.of("laps", "passes", "phases", "findings", "faults", "setups");

    /** Marks of work that is under way; programs that look for tables pass over names with an underscore. */
    public static final String TRYING = "_run/trying";

    static final String HOLD = "_run/at-work";
    private static final String CIRCUITS = "circuits";
    private static final String ENDING = ".parquet";

    private OutLayout() {}

    /** Returns the name of a batch's file of a table. */
    public static String file(String table, String circuit, String batch) {
        return table + "/" + PartName.write("circuit", circuit) + "/" + batch + ENDING;
    }

    /** Returns the name of the same batch's file of another table. */
    static String sibling(String file, String table) {
        return table + file.substring(file.indexOf('/'));
    }

    /** Returns the name of the file that a circuit is kept in. */
    public static String circuit(String name) {
        return CIRCUITS + "/" + PartName.encoded(name) + ".json";
    }
}
