package setwright.logbook;

import java.util.List;
import java.util.Locale;
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

    /** Returns the entries that hold all words of a text, or words that begin like them, in order; none when the text has no word. */
    public List<EntryRow> search(String text) {
        List<String> words = NO_WORD.splitAsStream(text.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .toList();
        return words.isEmpty() ? List.of() : database.search(entries(), words);
    }
}
