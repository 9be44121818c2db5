package setwright.app.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.units.UnitSystem;
import setwright.intake.columns.ParquetTable.Kind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The three forms of a table hold the same; CSV and Parquet are read back by DuckDB, JSON by Jackson. */
final class FormsTest {
    private static final Material MATERIAL = ExampleMaterial.named("stint.csv.gz");

    /** Half a unit in the last of ten digits, and what two roundings and a change of units may add. */
    private static final double PRINTED = 2e-9;

    @TempDir
    private Path folder;

    static Stream<Table<?>> tables() {
        return ExportTables.ALL.stream().<Table<?>>map(table -> table);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void allFormsHoldTheSame(Table<?> table) throws IOException, SQLException {
        Path parquet = folder.resolve("it's a [table].parquet");
        Path json = folder.resolve("table.json");
        long count = new TableWriter(table, MATERIAL, Format.PARQUET, UnitSystem.METRIC).write(parquet);
        assertThat(new TableWriter(table, MATERIAL, Format.JSON, UnitSystem.METRIC).write(json))
                .isEqualTo(count);
        assertThat(count).isPositive();
        List<List<@Nullable Object>> kept = rows("SELECT * FROM read_parquet(?)", parquet);
        JsonNode tree = JsonMapper.shared().readTree(Files.readString(json));
        List<? extends Column<?>> columns = table.columns(MATERIAL);
        assertThat(kept).hasSize((int) count);
        assertThat(tree.at("/rows").size()).isEqualTo((int) count);
        for (int i = 0; i < kept.size(); i++) {
            for (int k = 0; k < columns.size(); k++) {
                JsonNode cell = tree.at("/rows").get(i).get(columns.get(k).key());
                same(kept.get(i).get(k), cell.isNull() ? null : cell.asString(), 1.0, 0.0);
            }
        }
        for (UnitSystem units : UnitSystem.values()) {
            Path csv = folder.resolve(units + ".csv");
            new TableWriter(table, MATERIAL, Format.CSV, units).write(csv);
            List<List<@Nullable Object>> read = rows(
                    "SELECT * FROM read_csv(?, all_varchar = true, header = true, delim = ',', quote = '\"')", csv);
            assertThat(read).hasSize((int) count);
            for (int i = 0; i < read.size(); i++) {
                for (int k = 0; k < columns.size(); k++) {
                    Measure measure = columns.get(k).measure();
                    double zero = measure.shown(0.0, units);
                    same(kept.get(i).get(k), (String) read.get(i).get(k), measure.shown(1.0, units) - zero, zero);
                }
            }
        }
    }

    private static void same(@Nullable Object kept, @Nullable String other, double factor, double zero) {
        if (kept instanceof Double number) {
            double expected = factor * number + zero;
            assertThat(Math.abs(Double.parseDouble(Objects.requireNonNull(other)) - expected))
                    .isLessThanOrEqualTo(PRINTED * Math.max(Math.abs(expected), Math.abs(zero)));
        } else {
            assertThat(other).isEqualTo(kept == null ? null : kept.toString());
        }
    }

    private static List<List<@Nullable Object>> rows(String query, Path file) throws SQLException {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                var statement = connection.prepareStatement(query)) {
            statement.setString(1, file.toString().replaceAll("[\\[*?]", "[$0]"));
            try (ResultSet set = statement.executeQuery()) {
                while (set.next()) {
                    List<@Nullable Object> row = new ArrayList<>();
                    for (int i = 1; i <= set.getMetaData().getColumnCount(); i++) {
                        row.add(set.getObject(i));
                    }
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    @ParameterizedTest
    @MethodSource("tables")
    void jsonKeepsToItsSchema(Table<?> table) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/export.schema.json")), InputFormat.JSON);
        String json = text(table, MATERIAL, Format.JSON);
        assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(json.replaceFirst("\"version\": 1", "\"version\": 2"), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema.validate(
                        json.replace("\"" + table.columns().get(0).key() + "\": ", "\"x\": "), InputFormat.JSON))
                .isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyHeaderOfANumberSaysItsUnit(Table<?> table) throws IOException {
        String header = text(table, MATERIAL, Format.CSV).lines().findFirst().orElseThrow();
        for (Column<?> column : table.columns(MATERIAL)) {
            assertThat(header).contains(CsvForm.header(column, UnitSystem.METRIC));
        }
    }

    /** OWASP, "CSV Injection" (Community pages): cells that begin with these are taken for formulas by spreadsheets. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-2+3",
                "@SUM(A1)",
                "\t=1+1",
                "\r=1+1",
                "\n=1+1",
                "=HYPERLINK(\"a\",\"b\")",
                "=cmd|' /C calc'!A0"
            })
    void noTextIsTakenForAFormula(String name) throws IOException, SQLException {
        Material hostile = ExampleMaterial.named(name);
        for (Table<?> table : ExportTables.ALL) {
            if (table.columns().stream().noneMatch(column -> column.kind() == Kind.TEXT)) {
                continue;
            }
            Path csv = folder.resolve("hostile.csv");
            new TableWriter(table, hostile, Format.CSV, UnitSystem.METRIC).write(csv);
            List<List<@Nullable Object>> read = rows(
                    "SELECT * FROM read_csv(?, all_varchar = true, delim = ',', quote = '\"', header = true)", csv);
            List<? extends Column<?>> columns = table.columns(hostile);
            for (List<@Nullable Object> row : read) {
                assertThat(row).hasSize(columns.size());
                for (int k = 0; k < row.size(); k++) {
                    if (columns.get(k).kind() == Kind.TEXT && row.get(k) != null) {
                        assertThat(row.get(k).toString())
                                .doesNotStartWith(name)
                                .doesNotContainPattern("^[=+\\-@\\t\\r\\n]");
                    }
                }
            }
        }
        assertThat(text(new TrialsTable(), hostile, Format.CSV)).contains("'" + name.replace("\"", "\"\""));
        assertThat(JsonMapper.shared()
                        .readTree(text(new TrialsTable(), hostile, Format.JSON))
                        .at("/rows/0/car")
                        .asString())
                .as("JSON has the text as it is")
                .isEqualTo(name);
    }

    /** A negative number begins with one of those characters too, and must stay a number. */
    @Test
    void numbersStayNumbers() throws IOException {
        assertThat(text(new TrialsTable(), MATERIAL, Format.CSV)).contains(",-0.2,-0.4,0.01,-0.15,-0.3,-0.0000001\n");
    }

    @Test
    void textsAreQuotedAndInUtf8WithLineFeeds() throws IOException {
        Material material = ExampleMaterial.named("Été, \"très\" bien\nzwei");
        Path csv = folder.resolve("t.csv");
        new TableWriter(new TrialsTable(), material, Format.CSV, UnitSystem.METRIC).write(csv);
        byte[] bytes = Files.readAllBytes(csv);
        assertThat(new String(bytes, StandardCharsets.UTF_8))
                .contains("\"Été, \"\"très\"\" bien\nzwei\"")
                .doesNotContain("\r")
                .endsWith("\n");
    }

    @Test
    void aFileIsWrittenWholeOrNotAtAll() throws IOException {
        Path csv = Files.writeString(folder.resolve("t.csv"), "as it was");
        Material nothing = Material.of(List.of());
        for (Format format : Format.values()) {
            assertThatThrownBy(
                            () -> new TableWriter(new ChannelsTable(), nothing, format, UnitSystem.METRIC).write(csv))
                    .isInstanceOf(RuntimeException.class);
        }
        assertThat(csv).content().isEqualTo("as it was");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(csv);
        }
    }

    @Test
    void digitsAreRoundedAndPlain() {
        assertThat(Digits.of(1.0 / 3.0)).isEqualByComparingTo(new BigDecimal("0.3333333333"));
        assertThat(Digits.of(-0.0).toPlainString()).isEqualTo("0");
        assertThat(Digits.of(51140.0).toPlainString()).isEqualTo("51140");
        assertThat(Digits.of(1.0e-9).toPlainString()).isEqualTo("0.000000001");
    }

    private static String text(Table<?> table, Material material, Format format) throws IOException {
        StringWriter out = new StringWriter();
        new TableWriter(table, material, format, UnitSystem.METRIC).write(out);
        return out.toString();
    }
}
