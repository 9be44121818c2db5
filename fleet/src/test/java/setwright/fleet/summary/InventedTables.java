package setwright.fleet.summary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Tables of a school of which everything is known, with the columns that the program writes. */
final class InventedTables {
    private final List<String> recordings = new ArrayList<>();
    private final List<String> findings = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final List<String> setups = new ArrayList<>();

    /** A recording; the medium lap in seconds, the bar's position. */
    void recording(String name, String driver, int session, String status, double lapS, double bar) {
        recordingWithoutSetup(name, driver, session, status, lapS);
        setups.add(String.format("('%s', '%s', 'front_bar', %s, NULL)", name, driver, bar));
        setups.add(String.format("('%s', '%s', 'tyre', NULL, 'soft')", name, driver));
    }

    void recordingWithoutSetup(String name, String driver, int session, String status, double lapS) {
        recordings.add(String.format(
                "('%s', '%s', 'car', '2031-05-09', '%d', '%s', true, %s)", name, driver, session, status, lapS));
    }

    void finding(String recording, String driver, String cause, String corners, double size, double price) {
        findings.add(String.format(
                "('%s', '%s', 1, 'mid', 'all', 'understeer', '%s', '%s', %s, %s)",
                recording, driver, cause, corners, size, price));
    }

    void fault(String recording, String driver, String kind, String corners) {
        faults.add(String.format("('%s', '%s', '%s', '%s', CAST(NULL AS DOUBLE))", recording, driver, kind, corners));
    }

    void write(Path root) throws IOException, SQLException {
        write(
                root,
                "recordings",
                recordings,
                "recording, driver, car, date, session, status, \"shared corners\", \"median lap (s)\"");
        write(root, "setups", setups, "recording, driver, item, \"value (unit beside it)\", word");
        write(
                root,
                "findings",
                findings,
                "recording, driver, rank, phase, speed, balance, cause, corners, \"size (rad)\", \"price (s)\"");
        write(root, "faults", faults, "recording, driver, kind, corners, \"cost (s)\"");
    }

    private static void write(Path root, String table, List<String> rows, String columns)
            throws IOException, SQLException {
        Path folder = Files.createDirectories(root.resolve(table).resolve("circuit=hill"));
        String typed = columns.replaceFirst("rank", "CAST(rank AS BIGINT) AS rank")
                .replaceAll("(\"[^\"]*\\((?:s|rad|unit beside it)\\)\")", "CAST($1 AS DOUBLE) AS $1");
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute("COPY (SELECT " + typed + " FROM (VALUES " + String.join(", ", rows) + ") AS t(" + columns
                    + ")) TO '" + folder.resolve("all.parquet") + "' (FORMAT parquet)");
        }
    }
}
