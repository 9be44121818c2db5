package setwright.logbook.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.EntryRow;
import setwright.logbook.table.EntryTable;

/**
 * A folder on this machine. Several processes may have it open: readers never wait, writers wait for each other.
 *
 * @param folder      that holds everything
 * @param recordings  where the channels lie
 */
public record SqliteDatabase(Path folder, Path recordings) implements Database {
    private static final String FILE = "logbook.sqlite";
    private static final String RECORDINGS = "recordings";
    private static final int WAIT_MS = 10_000;

    static SqliteDatabase in(String place, boolean make) {
        Path folder = path(place);
        if (!Files.exists(folder.resolve(FILE)) && !make) {
            throw new LogbookProblem("there is no logbook in " + folder
                    + " yet. Read a recording into it with: setwright add FILE --car SHEET; or name another place with"
                    + " --logbook.");
        }
        try {
            Path kept = folder.resolve(RECORDINGS);
            Files.createDirectories(folder);
            Files.createDirectories(kept);
            return new SqliteDatabase(folder, kept);
        } catch (IOException e) {
            throw new LogbookProblem(
                    "no logbook can be kept in " + folder + ": the folder cannot be made. Name another with --logbook.",
                    e);
        }
    }

    private static Path path(String place) {
        try {
            return Path.of(place);
        } catch (InvalidPathException e) {
            throw new LogbookProblem("\"" + place + "\" is no folder. Name one with --logbook.", e);
        }
    }

    /** Write-ahead log: a killed process loses nothing that was committed. Every commit reaches the disk, so that a power cut does not either. */
    @Override
    public DataSource source() {
        // A transaction that begins by reading could not go on to write once another one has written.
        return source(TransactionMode.IMMEDIATE);
    }

    @Override
    public DataSource readingSource() {
        return source(TransactionMode.DEFERRED);
    }

    private DataSource source(TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.setBusyTimeout(WAIT_MS);
        config.enforceForeignKeys(true);
        config.setTransactionMode(mode);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + folder.resolve(FILE));
        return source;
    }

    @Override
    public String words() {
        return folder.toString();
    }

    @Override
    public String migrations() {
        return "setwright/logbook/sqlite";
    }

    @Override
    public String idType() {
        return "INTEGER PRIMARY KEY AUTOINCREMENT";
    }

    @Override
    public List<EntryRow> search(EntryTable entries, List<String> words) {
        return entries.searchSqlite(
                words.stream().map(word -> "\"" + word + "\" *").collect(Collectors.joining(" ")));
    }
}
