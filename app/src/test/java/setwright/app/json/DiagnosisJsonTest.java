package setwright.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Verdict;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class DiagnosisJsonTest {
    private static Schema schema;

    @BeforeAll
    static void readSchema() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/diagnose.schema.json")), InputFormat.JSON);
    }

    @Test
    void keepsToItsSchema() {
        assertThat(faults(DiagnosisJsonWriter.write(Example.answer()))).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void keepsToItsSchemaWithoutFindings(Verdict verdict) {
        String json = DiagnosisJsonWriter.write(Example.without(verdict, "because"));
        assertThat(faults(json)).isEmpty();
        assertThat(read(json).at("/verdict").asString()).isEqualTo(verdict.words());
    }

    /** Every field that programs were promised, by its path and type. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/version number",
                "/recording/laps number",
                "/recording/used/0 number",
                "/recording/aside/0/lap number",
                "/recording/aside/0/why string",
                "/driving/repeatable boolean",
                "/driving/corners/0/corner number",
                "/driving/corners/0/repeatable boolean",
                "/driving/corners/0/worst string",
                "/driving/corners/0/scatter_m number",
                "/driving/faults/0/kind string",
                "/driving/faults/0/corners/0 number",
                "/driving/faults/0/lap_share number",
                "/findings/0/rank number",
                "/findings/0/phase string",
                "/findings/0/speed string",
                "/findings/0/balance string",
                "/findings/0/trigger string",
                "/findings/0/cause string",
                "/findings/0/corners/0 number",
                "/findings/0/lap_share number",
                "/findings/0/lap_wide boolean",
                "/findings/0/probability number",
                "/findings/0/price_s number",
                "/findings/0/price_s_low number",
                "/findings/0/price_s_high number",
                "/findings/0/reasons/0/kind string",
                "/findings/0/reasons/0/sentence string",
                "/findings/0/reasons/0/proof/lap number",
                "/findings/0/reasons/0/proof/corner number",
                "/findings/0/alternatives/0/what string",
                "/findings/0/alternatives/0/probability number",
                "/findings/0/alternatives/0/why string",
                "/findings/0/setup array",
                "/reasons array",
                "/setup/known boolean",
                "/setup/items array",
                "/findings/0/speed_dependence/slope_deg_per_1000_m2s2 number",
                "/findings/0/speed_dependence/probability_aero number",
                "/technique array",
                "/changes array",
                "/verdict string",
                "/axles/front/grip number",
                "/axles/front/grip_low number",
                "/axles/rear/peak_slip_deg number",
                "/axles/rear/limit_share number",
                "/axles/rear/curve/0/slip_deg number",
                "/axles/rear/curve/0/force number",
                "/axles/wheels/locks_seen boolean",
                "/axles/wheels/events/0/kind string",
                "/axles/wheels/events/0/lap number",
                "/axles/wheels/events/0/corner number",
                "/axles/wheels/events/1/corner null",
                "/axles/hands/0/cause string",
                "/axles/measured/yaw_rate boolean"
            })
    void hasEveryPromisedField(String promise) {
        String[] parts = promise.split(" ", 2);
        JsonNode node = read(DiagnosisJsonWriter.write(Example.answer())).at(parts[0]);
        assertThat(node.isMissingNode()).as(parts[0]).isFalse();
        assertThat(node.getNodeType().name().toLowerCase(java.util.Locale.ROOT)).isEqualTo(parts[1]);
    }

    @Test
    void carriesTheValuesOfTheDiagnosis() {
        JsonNode json = read(DiagnosisJsonWriter.write(Example.answer()));
        assertThat(json.at("/recording/laps").asInt()).isEqualTo(14);
        assertThat(json.at("/recording/used").size()).isEqualTo(12);
        assertThat(json.at("/recording/aside/0/why").asString()).isEqualTo("out lap");
        assertThat(json.at("/findings/0/trigger").asString()).isEqualTo("brake release");
        assertThat(json.at("/findings/0/price_s_high").asDouble()).isEqualTo(0.5);
        assertThat(json.at("/findings/0/size_deg").asDouble()).isEqualTo(0.46);
        assertThat(json.at("/driving/corners/5/scatter_m").asDouble()).isEqualTo(9.1);
    }

    @Test
    void gesturesAreCountedByTheAxleThatTheyAnswer() {
        JsonNode hands = read(DiagnosisJsonWriter.write(Example.answer())).at("/axles/hands");
        assertThat(hands.size()).isEqualTo(2);
        assertThat(hands.at("/0/kind").asString()).isEqualTo("correction");
        assertThat(hands.at("/0/cause").asString()).isEqualTo("rear");
        assertThat(hands.at("/0/count").asInt()).isEqualTo(2);
        // winding on without the front near its peak is not listed
        assertThat(hands.at("/1/kind").asString()).isEqualTo("correction");
        assertThat(hands.at("/1/cause").asString()).isEqualTo("driver");
    }

    @Test
    void aSlideInOneCornerAloneIsNoFindingButSeen() {
        String json = DiagnosisJsonWriter.write(Example.seenInOneCorner());
        assertThat(faults(json)).isEmpty();
        assertThat(read(json).at("/findings").size()).isZero();
        JsonNode seen = read(json).at("/in_one_corner");
        assertThat(seen.size()).isEqualTo(1);
        assertThat(seen.at("/0/corner").asInt()).isEqualTo(5);
        assertThat(seen.at("/0/balance").asString()).isEqualTo("oversteer");
        assertThat(seen.at("/0/lap_share").asDouble()).isEqualTo(0.92);
        assertThat(seen.at("/0/size_deg").asDouble()).isEqualTo(0.46);
        assertThat(read(DiagnosisJsonWriter.write(Example.answer()))
                        .at("/in_one_corner")
                        .size())
                .isZero();
    }

    @Test
    void axlesThatWereNotLookedAtAreNull() {
        String json = DiagnosisJsonWriter.write(Example.without(Verdict.NOTHING_TO_CHANGE, "because"));
        assertThat(read(json).at("/axles").isNull()).isTrue();
    }

    /** Corner 12 scatters most in its lowest speed, which is no length. */
    @Test
    void theScatterInMetresIsALengthEvenWhereTheWorstMeasureIsNot() {
        JsonNode corner = read(DiagnosisJsonWriter.write(Example.answer())).at("/driving/corners/11");
        assertThat(corner.at("/worst").asString()).isEqualTo("lowest speed");
        assertThat(corner.at("/scatter_m").asDouble()).isEqualTo(2.3);
        assertThat(corner.at("/scatter/lowest speed/unit").asString()).isEqualTo("km/h");
    }

    @Test
    void whatIsNotKnownIsNull() {
        Answer answer = Example.answer();
        Diagnosis d = answer.diagnosis();
        Repeatability unknown = new Repeatability(
                false, Double.NaN, Double.NaN, Double.POSITIVE_INFINITY, 0.002, List.of(), "too few laps");
        String json = DiagnosisJsonWriter.write(new Answer(
                new Diagnosis(
                        d.stint(),
                        d.trace(),
                        d.passes(),
                        unknown,
                        List.of(),
                        List.of(),
                        Verdict.NOT_ENOUGH_EVIDENCE,
                        "few"),
                answer.car(),
                List.of(),
                List.of("The header of 'v' says km/h, but the data are in mph.")));
        assertThat(json).contains("The header of 'v' says km/h, but the data are in mph.");
        assertThat(json).doesNotContain("NaN", "Infinity");
        assertThat(faults(json)).isEmpty();
        assertThat(read(json).at("/driving/smallest_balance_deg").isNull()).isTrue();
    }

    @Test
    void theSchemaRefusesAnotherShape() {
        assertThat(faults("{\"version\": 2}")).isNotEmpty();
        assertThat(faults(DiagnosisJsonWriter.write(Example.answer()).replace("\"oversteer\"", "\"loose\"")))
                .isNotEmpty();
    }

    private static List<Error> faults(String json) {
        return schema.validate(json, InputFormat.JSON);
    }

    private static JsonNode read(String json) {
        return JsonMapper.shared().readTree(json);
    }
}
