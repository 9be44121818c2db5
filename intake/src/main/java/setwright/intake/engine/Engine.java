package setwright.intake.engine;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import java.util.function.Consumer;
import org.duckdb.DuckDBChunkedResult;
import org.duckdb.DuckDBDataChunkReader;
import org.duckdb.DuckDBDriver;
import org.duckdb.DuckDBPreparedStatement;

/** Opens the SQL engine (DuckDB, in memory) and writes names and texts the way its statements want them. */
public final class Engine {
    /** Half of the memory may hold a table; the rest is for working on it. */
    private static final double SHARE_OF_MEMORY = 0.5;

    private Engine() {}

    /** Opens an engine of its own; whoever asks for it closes it. */
    public static Connection open() throws SQLException {
        // Not by way of DriverManager: it knows only what its first caller's class loader shows, on a cluster another
        // one than ours.
        Connection connection = new DuckDBDriver().connect("jdbc:duckdb:", new Properties());
        try (Statement statement = connection.createStatement()) {
            // Several threads were seen to hand over the rows of a file above ten megabytes in another order.
            statement.execute("SET threads = 1");
            statement.execute("SET memory_limit = '1GB'");
            // A file must never make it fetch code.
            statement.execute("SET autoinstall_known_extensions = false");
            statement.execute("SET autoload_known_extensions = false");
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
        return connection;
    }

    /**
     * Asks for rows and hands them over as the engine has them: some thousand at a time, column by column.
     *
     * @param sql  a query
     */
    public static void ask(Connection connection, String sql, Consumer<DuckDBDataChunkReader> chunks)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql);
                DuckDBChunkedResult result =
                        statement.unwrap(DuckDBPreparedStatement.class).query()) {
            while (result.nextChunk()) {
                chunks.accept(result.chunk());
            }
        }
    }

    /** Returns how many rows of numbers may be held in memory. */
    public static long mostRows(int columns) {
        return (long) (SHARE_OF_MEMORY * Runtime.getRuntime().maxMemory() / (8.0 * Math.max(1, columns)));
    }

    /** Returns a text as a literal. */
    public static String text(String value) {
        return "'" + value.replace("'", "''") + "'";
    }

    /** Returns the name of a column as an identifier. */
    public static String name(String column) {
        return '"' + column.replace("\"", "\"\"") + '"';
    }

    /** Returns the name of one file as a literal; the engine reads names as patterns. */
    public static String file(Path file) {
        return text(file.toAbsolutePath().toString().replaceAll("[\\[*?]", "[$0]"));
    }

    /** Returns what went wrong, without what the engine would do about it. */
    public static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).strip().lines().findFirst().orElse("unreadable");
    }
}
