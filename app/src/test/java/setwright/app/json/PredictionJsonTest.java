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
import setwright.app.example.ExampleCarFit;
import setwright.app.example.ExamplePrediction;
import setwright.app.predict.PredictionAnswer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code predict --json} and {@code car fit --json} beside their schemas. */
final class PredictionJsonTest {

    @Test
    void predictionsKeepToTheirSchema() throws IOException {
        for (PredictionAnswer answer :
                List.of(ExamplePrediction.one(), ExamplePrediction.two(), ExamplePrediction.all())) {
            assertThat(faults("predict", PredictionJsonWriter.write(answer))).isEmpty();
        }
    }

    @Test
    void aPredictionCarriesItsValues() {
        JsonNode json = read(PredictionJsonWriter.write(ExamplePrediction.one()));
        assertThat(json.at("/version").asInt()).isEqualTo(1);
        assertThat(json.at("/asked").asBoolean()).isTrue();
        JsonNode first = json.at("/predictions/0");
        assertThat(first.at("/changes/0/item").asString()).isEqualTo("front_bar");
        assertThat(first.at("/changes/0/unit").asString()).isEqualTo("position");
        assertThat(first.at("/lap_time_s/value").asDouble()).isNegative();
        assertThat(first.at("/lap_time_s/probability_positive").asDouble()).isEqualTo(0.03);
        JsonNode mid = first.at("/phases")
                .valueStream()
                .filter(cell -> cell.at("/phase").asString().equals("mid")
                        && cell.at("/speed").asString().equals("low"))
                .findFirst()
                .orElseThrow();
        assertThat(mid.at("/balance_deg/value").asDouble()).isEqualTo(-0.156);
        assertThat(mid.at("/balance_deg/sign_sure").asBoolean()).isTrue();
        assertThat(mid.at("/share").asDouble()).isEqualTo(0.5);
        assertThat(first.at("/corners").size()).isEqualTo(13);
        assertThat(first.at("/lap/balance_deg").size())
                .isEqualTo(first.at("/lap/station_m").size());
    }

    @Test
    void singleStepsLeaveTheLapOut() {
        JsonNode json = read(PredictionJsonWriter.write(ExamplePrediction.all()));
        assertThat(json.at("/predictions").size()).isEqualTo(11);
        assertThat(json.at("/predictions/0/lap").isNull()).isTrue();
    }

    @Test
    void aFitKeepsToItsSchemaAndCarriesItsValues() throws IOException {
        String text = CarFitJsonWriter.write(ExampleCarFit.answer());
        assertThat(faults("car-fit", text)).isEmpty();
        assertThat(faults("car-fit", CarFitJsonWriter.write(ExampleCarFit.nothing())))
                .isEmpty();
        JsonNode json = read(text);
        assertThat(json.at("/values/1/after/value").asDouble()).isEqualTo(96_400.0);
        assertThat(json.at("/values/2/told").asBoolean()).isFalse();
        assertThat(json.at("/evidence/0/series/0/x").size()).isEqualTo(600);
    }

    @Test
    void theSchemasRefuseAnotherShape() throws IOException {
        assertThat(faults("predict", "{\"version\": 2}")).isNotEmpty();
        assertThat(faults("car-fit", "{\"version\": 1}")).isNotEmpty();
        assertThat(faults(
                        "predict",
                        PredictionJsonWriter.write(ExamplePrediction.one()).replace("\"mid\"", "\"middle\"")))
                .isNotEmpty();
    }

    private static List<?> faults(String schema, String json) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/" + schema + ".schema.json")), InputFormat.JSON)
                .validate(json, InputFormat.JSON);
    }

    private static JsonNode read(String json) {
        return JsonMapper.shared().readTree(json);
    }
}
