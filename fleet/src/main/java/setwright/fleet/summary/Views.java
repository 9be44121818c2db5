package setwright.fleet.summary;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;
import setwright.fleet.ledger.OutLayout;

/** The tables as views that SQL can be asked of. */
final class Views {
    private final SparkSession spark;

    /**
     * Opens the tables that the questions need.
     *
     * @throws IOException when there are none
     */
    Views(SparkSession spark, Depot tables, Optional<String> driver, Optional<String> circuit) throws IOException {
        this.spark = spark;
        for (String table : List.of(OutLayout.LEDGER, "findings", "faults", "setups")) {
            if (tables.list(table).isEmpty()) {
                throw new IOException("there are no tables in " + tables.root()
                        + ". Name with --in what fleet diagnose was given as --out");
            }
            String root = Depots.isLocal(tables) ? "file://" + tables.root() : tables.root();
            Dataset<Row> rows = spark.read().schema(TableSchema.of(table)).parquet(root + "/" + table);
            rows = only(rows, "driver", driver);
            only(rows, "circuit", circuit).createOrReplaceTempView(table);
        }
        ask("SELECT * FROM recordings WHERE status = 'judged'").cache().createOrReplaceTempView("judged");
        // Whoever is not named is a driver of his own, for each recording another one.
        ask("""
                SELECT f.recording, coalesce(f.driver, f.recording) AS who, f.circuit, f.corners, 'driving' AS kind,
                       f.kind AS what, f.`cost (s)` AS cost
                FROM faults f JOIN judged j ON f.recording = j.recording
                UNION ALL
                SELECT f.recording, coalesce(f.driver, f.recording), f.circuit, f.corners, f.cause,
                       concat(f.balance, ' (', f.phase, if(f.speed = 'all', '', concat(', ', f.speed, ' speed')), ')'),
                       f.`price (s)`
                FROM findings f JOIN judged j ON f.recording = j.recording
                """).cache().createOrReplaceTempView("troubles");
    }

    private static Dataset<Row> only(Dataset<Row> rows, String column, Optional<String> value) {
        Column named = functions.col(column);
        return value.map(wanted -> rows.where(named.equalTo(functions.lit(wanted))))
                .orElse(rows);
    }

    Dataset<Row> ask(String question) {
        return spark.sql(question);
    }

    List<Row> rows(String question) {
        return ask(question).collectAsList();
    }
}
