package setwright.logbook.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.EntryRow;
import setwright.logbook.table.EntryTable;

/** A database that can hold a logbook. */
public sealed interface Database permits SqliteDatabase, PostgresDatabase {

    /** Version of the last migration; a test holds it against the files. */
    String NEWEST = "3";

    /**
     * Returns the database that a place names.
     *
     * @param place       a folder, or {@code postgres://user@host:port/name}
     * @param recordings  where the channels of a team's recordings lie; a folder has its own place for them
     * @param make        whether a logbook is begun where there is none
     * @throws LogbookProblem when there is none, or the place cannot be used
     */
    static Database at(String place, Optional<Path> recordings, boolean make) {
        if (!PostgresDatabase.isMeantBy(place) && place.matches("[A-Za-z][A-Za-z0-9+.:-]*:/?/.*")) {
            // Not quoted: it may hold a password.
            throw new LogbookProblem("the logbook's address begins with a word that is not known. Write a folder, or "
                    + PostgresDatabase.FORM + ".");
        }
        return PostgresDatabase.isMeantBy(place)
                ? PostgresDatabase.at(place, recordings)
                : SqliteDatabase.in(place, make);
    }

    /** Returns where connections come from. */
    DataSource source();

    /** Returns where connections come from that only read. */
    DataSource readingSource();

    /**
     * Returns the folder of the recordings.
     *
     * @throws LogbookProblem when nobody said where it is
     */
    Path recordings();

    /** Returns its name, for people; without any password. */
    String words();

    /** Returns where the migrations lie that only this kind of database has. */
    String migrations();

    /** Returns how a column is declared that numbers the rows. */
    String idType();

    /** Returns the entries that hold all these words, or words that begin like them. */
    List<EntryRow> search(EntryTable entries, List<String> words);

    /**
     * Brings the tables up to date.
     *
     * @throws LogbookProblem when the logbook cannot be opened, or was written by a newer program
     */
    default void migrate() {
        if (isUpToDate()) {
            return;
        }
        try {
            Flyway.configure()
                    .dataSource(source())
                    .locations("classpath:setwright/logbook/tables", "classpath:" + migrations())
                    .placeholders(Map.of("id", idType()))
                    .validateMigrationNaming(true)
                    .ignoreMigrationPatterns(new String[0])
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new LogbookProblem("the logbook " + words() + " cannot be opened: " + cause(e), e);
        }
    }

    /** Asked first: it takes a hundredth of the time that checking all migrations does. */
    private boolean isUpToDate() {
        try (Connection connection = source().getConnection();
                Statement statement = connection.createStatement();
                ResultSet newest = statement.executeQuery(
                        "SELECT version FROM flyway_schema_history ORDER BY installed_rank DESC LIMIT 1")) {
            return newest.next() && NEWEST.equals(newest.getString(1));
        } catch (SQLException e) {
            return false; // new, or in trouble that the migration will tell of
        }
    }

    private static String cause(FlywayException e) {
        String text = String.valueOf(e.getMessage());
        if (text.contains("not resolved locally")) {
            return "a newer setwright has written it. Use that one, or name another place with --logbook.";
        }
        return LogbookProblem.rootOf(e) + ". Check that it can be reached and written to.";
    }
}
