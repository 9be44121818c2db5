package setwright.logbook;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import setwright.logbook.database.Database;
import setwright.logbook.row.EntryRow;
import setwright.logbook.table.CarTable;
import setwright.logbook.table.CircuitTable;
import setwright.logbook.table.DiagnosisTable;
import setwright.logbook.table.DriverTable;
import setwright.logbook.table.EntryTable;
import setwright.logbook.table.FittingTable;
import setwright.logbook.table.ProposalTable;
import setwright.logbook.table.RecordingTable;
import setwright.logbook.table.SetupTable;
import setwright.logbook.table.StintTable;
import setwright.logbook.table.TrialTable;
import setwright.logbook.table.VerdictTable;

/** The tables, within one transaction. */
public final class Tables {
    /** All tables, in an order in which each comes after those that it points to. */
    public static final List<String> NAMES = List.of(
            "circuit",
            "driver",
            "car",
            "setup",
            "fitting",
            "recording",
            "stint",
            "diagnosis",
            "finding",
            "proposal",
            "trial",
            "trial_item",
            "trial_aside",
            "verdict",
            "tried_effect",
            "entry");
    /** What a database keeps for its own searching. */
    private static final String OF_THE_DATABASE = "word_list";

    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final Handle handle;
    private final Database database;

    Tables(Handle handle, Database database) {
        this.handle = handle;
        this.database = database;
    }

    /** Returns the cars. */
    public CarTable cars() {
        return handle.attach(CarTable.class);
    }

    /** Returns the circuits. */
    public CircuitTable circuits() {
        return handle.attach(CircuitTable.class);
    }

    /** Returns the drivers. */
    public DriverTable drivers() {
        return handle.attach(DriverTable.class);
    }

    /** Returns the versions of setups. */
    public SetupTable setups() {
        return handle.attach(SetupTable.class);
    }

    /** Returns which setup was on a car when. */
    public FittingTable fittings() {
        return handle.attach(FittingTable.class);
    }

    /** Returns the recordings. */
    public RecordingTable recordings() {
        return handle.attach(RecordingTable.class);
    }

    /** Returns the stints. */
    public StintTable stints() {
        return handle.attach(StintTable.class);
    }

    /** Returns the diagnoses. */
    public DiagnosisTable diagnoses() {
        return handle.attach(DiagnosisTable.class);
    }

    /** Returns the proposals. */
    public ProposalTable proposals() {
        return handle.attach(ProposalTable.class);
    }

    /** Returns the trials. */
    public TrialTable trials() {
        return handle.attach(TrialTable.class);
    }

    /** Returns the verdicts. */
    public VerdictTable verdicts() {
        return handle.attach(VerdictTable.class);
    }

    /** Returns the story. */
    public EntryTable entries() {
        return handle.attach(EntryTable.class);
    }

    /**
     * Returns all rows of a table, each with its columns by name.
     *
     * @param name  one of {@link #NAMES}
     */
    public List<Map<String, Object>> rows(String name) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException("there is no table " + name);
        }
        List<Map<String, Object>> rows = handle.createQuery("SELECT * FROM " + name + " ORDER BY 1, 2")
                .mapToMap()
                .list();
        rows.forEach(row -> row.remove(OF_THE_DATABASE));
        return rows;
    }

    /** Returns the entries that hold all words of a text, or words that begin like them, in order; none when the text has no word. */
    public List<EntryRow> search(String text) {
        List<String> words = NO_WORD.splitAsStream(text.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .toList();
        return words.isEmpty() ? List.of() : database.search(entries(), words);
    }
}
