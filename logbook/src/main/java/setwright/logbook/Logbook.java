package setwright.logbook;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;
import org.jdbi.v3.core.mapper.reflect.ReflectionMappers;
import org.jdbi.v3.core.mapper.reflect.SnakeCaseColumnNameMatcher;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.jdbi.v3.sqlobject.SqlObjectPlugin;
import setwright.logbook.database.Database;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.DiagnosisRow;
import setwright.logbook.row.DriverRow;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.FindingRow;
import setwright.logbook.row.FittingRow;
import setwright.logbook.row.ProposalRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;
import setwright.logbook.row.TrialAsideRow;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;
import setwright.logbook.table.TimeText;

/** An open logbook. Safe for several threads; several processes may have the same one open. */
public final class Logbook {
    private static final Set<Class<? extends Record>> ROWS = Set.of(
            CarRow.class,
            CircuitRow.class,
            DiagnosisRow.class,
            DriverRow.class,
            EntryRow.class,
            FindingRow.class,
            FittingRow.class,
            ProposalRow.class,
            RecordingRow.class,
            SetupRow.class,
            StintRow.class,
            TrialAsideRow.class,
            TrialItemRow.class,
            TrialRow.class,
            TriedEffectRow.class,
            VerdictRow.class);
    /** Somebody else took the same number or name first, or two transactions crossed: SQL standard and PostgreSQL's codes. */
    private static final Set<String> WORTH_ANOTHER_TRY = Set.of("23505", "40001", "40P01");

    private static final int TRIES = 40;
    private static final int LONGEST_PAUSE_MS = 20;

    private final Database database;
    private final Jdbi jdbi;
    private final Jdbi reading;

    private Logbook(Database database) {
        this.database = database;
        this.jdbi = jdbi(database.source());
        this.reading = jdbi(database.readingSource());
    }

    private static Jdbi jdbi(DataSource source) {
        Jdbi jdbi = Jdbi.create(source)
                .installPlugin(new SqlObjectPlugin())
                .registerArgument(new TimeText.Argument())
                .registerColumnMapper(Instant.class, new TimeText.Column());
        jdbi.getConfig(ReflectionMappers.class).setColumnNameMatchers(List.of(new SnakeCaseColumnNameMatcher()));
        ROWS.forEach(row -> jdbi.registerRowMapper(ConstructorMapper.factory(row)));
        return jdbi;
    }

    /**
     * Opens a logbook and brings its tables up to date.
     *
     * @param place       a folder, or {@code postgres://user@host:port/name}
     * @param recordings  where the channels of recordings lie; a folder has its own place for them
     * @param make        whether a logbook is begun where there is none
     * @throws LogbookProblem when there is none, or it cannot be opened
     */
    public static Logbook open(String place, Optional<Path> recordings, boolean make) {
        Database database = Database.at(place, recordings, make);
        database.migrate();
        return new Logbook(database);
    }

    /** Returns the folder in which the channels of recordings lie. */
    public Path recordings() {
        return database.recordings();
    }

    /** Returns where it is, for people. */
    public String words() {
        return database.words();
    }

    /**
     * Looks at the tables as they are at one moment; never waits for those who write.
     *
     * @param work  writes nothing
     */
    public <T> T look(Function<Tables, T> work) {
        try {
            return reading.inTransaction(handle -> work.apply(new Tables(handle, database)));
        } catch (JdbiException e) {
            throw new LogbookProblem("the logbook " + words() + " could not be read: " + message(e), e);
        }
    }

    /**
     * Does work in one transaction: all of it is kept, or nothing.
     *
     * @param work  has no other effects; it is done again when another process came in between
     */
    public <T> T with(Function<Tables, T> work) {
        for (int attempt = 1; ; attempt++) {
            try {
                return jdbi.inTransaction(
                        TransactionIsolationLevel.SERIALIZABLE, handle -> work.apply(new Tables(handle, database)));
            } catch (JdbiException e) {
                if (attempt == TRIES || !worthAnotherTry(e)) {
                    throw new LogbookProblem("the logbook " + words() + " could not be used: " + message(e), e);
                }
                pause();
            }
        }
    }

    /** Of no fixed length, so that two who met do not meet again. */
    private static void pause() {
        LockSupport.parkNanos(ThreadLocalRandom.current().nextLong(LONGEST_PAUSE_MS * 1_000_000L));
    }

    private static boolean worthAnotherTry(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && WORTH_ANOTHER_TRY.contains(String.valueOf(sql.getSQLState()))) {
                return true;
            }
        }
        return false;
    }

    private static String message(Throwable failure) {
        String text = LogbookProblem.rootOf(failure);
        if (text.contains("SQLITE_BUSY") || text.contains("SQLITE_LOCKED")) {
            return "somebody else has been writing to it for too long. Wait, then try again.";
        }
        if (text.contains("SQLITE_FULL") || text.contains("SQLITE_IOERR")) {
            return "the disk is full or takes nothing more. Make room, then try again; nothing was changed.";
        }
        if (text.contains("SQLITE_READONLY")) {
            return "it may not be written to. Check the permissions of its folder.";
        }
        return text + ".";
    }
}
