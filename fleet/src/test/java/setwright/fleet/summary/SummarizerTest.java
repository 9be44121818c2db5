package setwright.fleet.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.fleet.SummaryRequest;
import setwright.fleet.Rows;
import setwright.fleet.SparkFleet;
import setwright.fleet.measure.InventedTables;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Forty drivers with four recordings each, everything counted by hand. Sessions 1 and 2 of all have the same setup; before session 3 the front bar goes
 * down by one, before session 4 nothing is changed. Understeer of the car is in sessions 1 and 2 of drivers 1 to 20, and gone or less afterwards.
 * Driver 40 coasts in all of his recordings, drivers 1 to 8 in one of theirs.
 */
final class SummarizerTest {
    private static final int DRIVERS = 40;
    /** What is worked out here by hand in decimals. */
    private static final double ROUND_OFF = 1.0e-9;

    @TempDir
    private static Path folder;

    private static JsonNode json;

    @BeforeAll
    static void ask() throws Exception {
        InventedTables tables = new InventedTables();
        for (int driver = 1; driver <= DRIVERS; driver++) {
            String name = String.format("D%02d", driver);
            for (int session = 1; session <= 4; session++) {
                String recording = name + "/" + session;
                double lap = 90.0 + 0.01 * driver - (session >= 3 ? 0.3 : 0.0) - (session == 2 ? 0.1 : 0.0);
                recording(tables, recording, name, session, "judged", lap, session >= 3 ? 3.0 : 4.0);
                if (driver <= 20 && session <= 2) {
                    tables.finding(recording, name, "car", "1 4", 0.01, 0.2);
                }
                if (driver <= 5 && session == 3) {
                    tables.finding(recording, name, "car", "4", 0.005, 0.1);
                }
                if (driver == 40 || (driver <= 8 && session == 1)) {
                    tables.fault(recording, name, "coasting", "2");
                }
            }
        }
        recording(tables, "X/1", "X", 1, "failed", 0.0, 4.0);
        recording(tables, "X/2", "X", 2, "not enough evidence", 91.0, 3.0);
        tables.recording("Y/1", "Y", 1, "not enough evidence", 92.0);
        tables.recording("Y/2", "Y", 2, "not enough evidence", 91.0);
        tables.write(folder, "hill", "all");
        json = JsonMapper.shared().readTree(answer(Optional.empty(), true));
    }

    private static void recording(
            InventedTables tables, String name, String driver, int session, String status, double lapS, double bar) {
        tables.recording(name, driver, session, status, lapS);
        tables.item(name, driver, "front_bar", bar);
        tables.item(name, driver, "tyre", "soft");
    }

    private static String answer(Optional<String> driver, boolean asJson) throws IOException {
        return new SparkFleet()
                .summary(new SummaryRequest(folder.toString(), "local[2]", driver, Optional.empty(), asJson));
    }

    private static JsonNode row(String table, String key, String value) {
        for (JsonNode row : json.get(table)) {
            if (row.get(key).asString().equals(value)) {
                return row;
            }
        }
        throw new AssertionError(value + " is not in " + json.get(table));
    }

    @Test
    void everyRecordingIsCounted() {
        assertThat(json.get("recordings").get("all").asInt()).isEqualTo(164);
        assertThat(json.get("recordings").get("judged").asInt()).isEqualTo(160);
        assertThat(json.get("recordings").get("failed").asInt()).isEqualTo(1);
        assertThat(json.get("recordings").get("drivers").asInt()).isEqualTo(DRIVERS);
    }

    @Test
    void problemsAreCountedInRecordingsAndDrivers() {
        JsonNode problem = row("problems", "what", "understeer (mid)");
        assertThat(problem.get("kind").asString()).isEqualTo("car");
        assertThat(problem.get("recordings").asInt()).isEqualTo(45);
        assertThat(problem.get("of").asInt()).isEqualTo(160);
        assertThat(problem.get("drivers").asInt()).isEqualTo(20);
        assertThat(problem.get("cost_s").asDouble()).isEqualTo(0.2);
        JsonNode share = problem.get("share");
        assertThat(share.get("value").asDouble()).isEqualTo(45.0 / 160.0, within(ROUND_OFF));
        // Half of the drivers have it in half of their recordings: forty drivers tell less than 160 recordings would.
        assertThat(share.get("low").asDouble()).isBetween(0.18, 0.21);
        assertThat(share.get("high").asDouble()).isBetween(0.35, 0.38);
    }

    @Test
    void cornersShareWhatAProblemCosts() {
        JsonNode first = json.get("corners").get(0);
        assertThat(first.get("corner").asInt()).isEqualTo(4);
        assertThat(first.get("recordings").asInt()).isEqualTo(45);
        // 40 recordings with 0.2 s over two corners and 5 with 0.1 s at this one, among 160.
        assertThat(first.get("cost_s").get("value").asDouble())
                .isEqualTo((40 * 0.1 + 5 * 0.1) / 160.0, within(ROUND_OFF));
        JsonNode coasting = row("corners", "what", "coasting");
        assertThat(coasting.get("corner").asInt()).isEqualTo(2);
        assertThat(coasting.get("cost_s").get("value").isNull())
                .as("nothing tells")
                .isTrue();
    }

    @Test
    void onlyTheDriverWhoAlwaysDoesItStandsOut() {
        assertThat(json.get("drivers").size()).isEqualTo(1);
        JsonNode driver = json.get("drivers").get(0);
        assertThat(driver.get("driver").asString()).isEqualTo("D40");
        assertThat(driver.get("recordings").asInt()).isEqualTo(4);
        assertThat(driver.get("share").asDouble()).as("drawn toward the others").isBetween(0.3, 0.99);
        assertThat(driver.get("usual").asDouble()).isBetween(0.03, 0.15);
    }

    @Test
    void aChangeOfOneItemIsATry() {
        assertThat(json.get("changes").size()).isEqualTo(1);
        JsonNode change = json.get("changes").get(0);
        assertThat(change.get("item").asString()).isEqualTo("front_bar");
        assertThat(change.get("direction").asString()).isEqualTo("down");
        assertThat(change.get("tries").asInt()).isEqualTo(40);
        assertThat(change.get("told").asInt()).isEqualTo(20);
        assertThat(change.get("gone").asInt()).isEqualTo(15);
        assertThat(change.get("less").asInt()).isEqualTo(5);
        assertThat(change.get("helped").get("value").asDouble()).isEqualTo(1.0);
        // Twenty of twenty: Wilson's interval begins at 1 / (1 + 1.96^2 / 20).
        assertThat(change.get("helped").get("low").asDouble())
                .isEqualTo(1.0 / (1.0 + 1.959964 * 1.959964 / 20.0), within(1.0e-6));
        assertThat(change.get("lap_time_s").get("value").asDouble()).isEqualTo(-0.2, within(ROUND_OFF));
        JsonNode unchanged = json.get("unchanged");
        // not those of Y, of whose setup nothing is known
        assertThat(unchanged.get("pairs").asInt()).isEqualTo(80);
        // Sessions 1 and 2 of twenty drivers have the same problem; sessions 3 and 4 of five of them have it once.
        assertThat(unchanged.get("told").asInt()).isEqualTo(25);
        assertThat(unchanged.get("gone").asInt()).isEqualTo(5);
        assertThat(unchanged.get("less").asInt()).isZero();
        assertThat(unchanged.get("better").get("value").asDouble()).isEqualTo(0.2, within(ROUND_OFF));
        assertThat(unchanged.get("lap_time_s").get("value").asDouble()).isEqualTo(-0.05, within(ROUND_OFF));
    }

    @Test
    void oneDriverIsTooFew() throws IOException {
        JsonNode one = JsonMapper.shared().readTree(answer(Optional.of("D01"), true));
        assertThat(one.get("recordings").get("all").asInt()).isEqualTo(4);
        assertThat(one.get("problems").get(0).get("share").get("too_few").asBoolean())
                .isTrue();
        assertThat(one.get("problems").get(0).get("share").get("low").isNull()).isTrue();
        assertThat(one.get("drivers").isEmpty()).isTrue();
    }

    @Test
    void jsonKeepsToItsSchema() throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs/fleet-summary.schema.json")), InputFormat.JSON)
                        .validate(json.toString(), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void peopleReadTheSame() throws IOException {
        assertThat(answer(Optional.empty(), false))
                .contains(
                        "164 recordings: 160 judged",
                        "understeer (mid)",
                        "45 of 160",
                        "D40",
                        "front_bar",
                        "down",
                        "15 of 20",
                        "-0.200 s",
                        "not told",
                        "80 pairs of 40 drivers, gone 5 of 25, less 0, better 20 % (",
                        "too few\" means fewer than 6");
    }

    /** Half of the tables lack columns, as those of an older version do. */
    @Test
    void tablesOfAnOlderVersionAreReadWithEmptyColumns() throws IOException {
        Path mixed = Files.createDirectory(folder.resolve("mixed"));
        for (String half : List.of("old", "new")) {
            InventedTables tables = new InventedTables();
            recording(tables, half + "/1", half, 1, "judged", 90.0, 4.0);
            tables.finding(half + "/1", half, "car", "1", 0.01, 0.2);
            tables.fault(half + "/1", half, "coasting", "2");
            tables.write(mixed, "hill", half);
        }
        for (Map.Entry<String, String> column : Map.of(
                        "recordings", "shared corners", "findings", "price (s)", "faults", "cost (s)", "setups", "unit")
                .entrySet()) {
            Path file = mixed.resolve(column.getKey() + "/circuit=hill/old.parquet");
            Path whole = Files.move(file, folder.resolve("whole.parquet"));
            Rows.copyWithout(column.getValue(), whole, file);
            Files.delete(whole);
        }
        JsonNode read = JsonMapper.shared()
                .readTree(new SparkFleet()
                        .summary(new SummaryRequest(
                                mixed.toString(), "local[2]", Optional.empty(), Optional.empty(), true)));
        assertThat(read.get("recordings").get("judged").asInt()).isEqualTo(2);
        assertThat(read.get("problems").size()).isEqualTo(2);
        for (JsonNode problem : read.get("problems")) {
            assertThat(problem.get("recordings").asInt()).isEqualTo(2);
        }
        // Of the older one nobody knows whether it shares corners, nor what its problem cost.
        assertThat(read.get("corners").get(0).get("of").asInt()).isEqualTo(1);
        assertThat(read.get("corners").get(0).get("cost_s").get("value").asDouble())
                .isEqualTo(0.2, within(ROUND_OFF));
    }

    @Test
    void aPlaceWithoutTablesIsRefusedInAWord() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThatThrownBy(() -> new SparkFleet()
                        .summary(new SummaryRequest(
                                empty.toString(), "local[2]", Optional.empty(), Optional.empty(), true)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("there are no tables in");
    }

    @Test
    void anIntervalOverDriversIsWiderThanOneOverRecordings() {
        Clusters alike = new Clusters();
        Clusters apart = new Clusters();
        for (int driver = 0; driver < 20; driver++) {
            alike.add(5.0, 10.0);
            apart.add(driver % 2 == 0 ? 10.0 : 0.0, 10.0);
        }
        assertThat(alike.share().value()).isEqualTo(apart.share().value()).isEqualTo(OptionalDouble.of(0.5));
        double narrow = alike.share().high().orElseThrow() - alike.share().low().orElseThrow();
        double wide = apart.share().high().orElseThrow() - apart.share().low().orElseThrow();
        // 200 independent recordings: 2 * 1.96 * sqrt(0.25 / 200) and a little less; 20 drivers of one kind or the
        // other: t(19) * 2 * 0.513 / sqrt(20).
        assertThat(narrow).isEqualTo(0.1373, within(1.0e-3));
        assertThat(wide).isEqualTo(2.0 * 2.093 * 0.51299 / Math.sqrt(20.0), within(1.0e-3));
    }
}
