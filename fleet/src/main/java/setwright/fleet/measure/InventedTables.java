package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.app.export.Column;
import setwright.app.export.GrowingParquet;
import setwright.fleet.ledger.OutLayout;
import setwright.fleet.work.OutTables;
import setwright.intake.columns.TableCells;

/** Tables of a school of which everything is known, with all columns that a run writes; those that nobody asks for are empty. */
public final class InventedTables {
    private static final String LEDGER = OutLayout.LEDGER;
    private static final String FINDINGS = "findings";
    private static final String FAULTS = "faults";
    private static final String SETUPS = "setups";

    /** Cells by the names of their columns. */
    private final Map<String, List<Map<String, Object>>> rows = new TreeMap<>();

    /** Makes empty ones. */
    public InventedTables() {
        List.of(LEDGER, FINDINGS, FAULTS, SETUPS).forEach(table -> rows.put(table, new ArrayList<>()));
    }

    /** A recording; its car sheet tells no setup unless items are added. */
    public void recording(String name, String driver, int session, String status, double medianLapS) {
        add(
                LEDGER,
                name,
                driver,
                Map.of(
                        "car",
                        "car",
                        "date",
                        "2031-05-09",
                        "session",
                        String.valueOf(session),
                        "status",
                        status,
                        "shared corners",
                        true,
                        "median lap",
                        medianLapS));
    }

    /** An item of the setup that is a number. */
    public void item(String recording, String driver, String item, double value) {
        add(SETUPS, recording, driver, Map.of("item", item, "value", value, "unit", "position"));
    }

    /** An item of the setup that is a word. */
    public void item(String recording, String driver, String item, String word) {
        add(SETUPS, recording, driver, Map.of("item", item, "word", word));
    }

    /** Understeer in the middle of corners, the most costly problem of a recording. */
    public void finding(String recording, String driver, String cause, String corners, double sizeRad, double priceS) {
        add(
                FINDINGS,
                recording,
                driver,
                Map.of(
                        "rank",
                        1L,
                        "phase",
                        "mid",
                        "speed",
                        "all",
                        "balance",
                        "understeer",
                        "cause",
                        cause,
                        "corners",
                        corners,
                        "size",
                        sizeRad,
                        "price",
                        priceS));
    }

    /** A fault of the driving of which nothing tells what it costs. */
    public void fault(String recording, String driver, String kind, String corners) {
        add(FAULTS, recording, driver, Map.of("kind", kind, "corners", corners));
    }

    private void add(String table, String recording, String driver, Map<String, Object> cells) {
        Map<String, Object> row = new HashMap<>(cells);
        row.put("recording", recording);
        row.put("driver", driver);
        rows.computeIfAbsent(table, name -> new ArrayList<>()).add(row);
    }

    /** Writes them as one batch of a circuit. */
    public void write(Path root, String circuit, String batch) throws IOException {
        for (Map.Entry<String, List<Map<String, Object>>> table : rows.entrySet()) {
            List<Column<Map<String, Object>>> columns = OutTables.columns(table.getKey()).stream()
                    .map(InventedTables::ofRow)
                    .toList();
            List<String> names = columns.stream().map(Column::name).toList();
            table.getValue().forEach(row -> check(table.getKey(), row, names));
            Path file = root.resolve(OutLayout.file(table.getKey(), circuit, batch));
            Files.createDirectories(Objects.requireNonNull(file.getParent(), "a file below the root has a folder"));
            try (GrowingParquet<Map<String, Object>> growing = GrowingParquet.open(columns)) {
                growing.ready(table.getValue().stream()).add();
                growing.finish(file);
            }
        }
    }

    private static void check(String table, Map<String, Object> row, List<String> names) {
        if (!names.containsAll(row.keySet())) {
            throw new IllegalArgumentException("the columns of " + table + " are "
                    + names.stream().collect(Collectors.joining(", ")) + "; there is none for all of " + row.keySet());
        }
    }

    private static Column<Map<String, Object>> ofRow(Column<?> column) {
        return new Column<>(
                column.name(),
                column.kind(),
                column.measure(),
                column.words(),
                (row, cells) -> put(row.get(column.name()), cells));
    }

    private static void put(@Nullable Object cell, TableCells cells) throws IOException {
        if (cell instanceof String text) {
            cells.text(text);
        } else if (cell instanceof Long number) {
            cells.whole(number);
        } else if (cell instanceof Double number) {
            cells.number(number);
        } else if (cell instanceof Boolean truth) {
            cells.truth(truth);
        } else {
            cells.empty();
        }
    }
}
