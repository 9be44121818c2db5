package setwright.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.example.ExampleSweep;
import setwright.app.sweep.SweepAnswer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code sweep --json} beside its schema. */
final class SweepJsonTest {

    @Test
    void sweepsKeepToTheirSchema() throws IOException {
        for (SweepAnswer answer : List.of(ExampleSweep.one(), ExampleSweep.two(), ExampleSweep.flat())) {
            assertThat(faults(SweepJsonWriter.write(answer))).isEmpty();
        }
        assertThat(faults("{\"version\": 2}")).isNotEmpty();
        assertThat(faults(SweepJsonWriter.write(ExampleSweep.one()).replace("lap_time_s", "lap_time")))
                .isNotEmpty();
    }

    @Test
    void itCarriesItsValues() {
        JsonNode json = JsonMapper.shared().readTree(SweepJsonWriter.write(ExampleSweep.two()));
        assertThat(json.at("/version").asInt()).isEqualTo(1);
        assertThat(json.at("/items/1/name").asString()).isEqualTo("rear_wing");
        assertThat(json.at("/items/0/values").size()).isEqualTo(11);
        assertThat(json.at("/laps").size()).isEqualTo(99);
        assertThat(json.at("/laps/1/values/1").asDouble()).isEqualTo(3.0);
        assertThat(json.at("/present/difference_s").asDouble()).isZero();
        assertThat(json.at("/slow_corners").size()).isEqualTo(3);
        // 27 m/s in the slower half: 21, 27 and 33 m/s
        assertThat(json.at("/present/corners/1/lowest_kmh").asDouble()).isEqualTo(97.38);
        assertThat(json.at("/recording").asString()).isEqualTo("stint.csv.gz");
    }

    private static List<?> faults(String json) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/sweep.schema.json")), InputFormat.JSON)
                .validate(json, InputFormat.JSON);
    }
}
