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
import setwright.app.evidence.Answer;
import setwright.app.evidence.PooledAnswer;
import setwright.app.example.Example;
import setwright.app.report.pooled.PooledReport;
import setwright.app.text.PooledText;
import setwright.app.text.Terminal;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.pooling.DriverStint;
import setwright.core.pooling.Pooler;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Two stints of the invented car, in all three forms. */
final class PooledJsonTest {
    private static PooledAnswer answer(String one, String other) {
        Answer answer = Example.answer();
        return new PooledAnswer(
                List.of(answer, answer),
                Pooler.pool(
                        List.of(new DriverStint(one, answer.diagnosis()), new DriverStint(other, answer.diagnosis()))));
    }

    private static void assertKeeps(String schema, String json) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of(schema)), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void keepsToItsSchemaAndEachStintToItsOwn() throws IOException {
        String json = PooledJsonWriter.write(answer("Ada", "Bo"));
        assertKeeps("../docs/diagnose-pooled.schema.json", json);
        JsonNode tree = JsonMapper.shared().readTree(json);
        assertKeeps(
                "../docs/diagnose.schema.json", tree.at("/stints/1/diagnosis").toString());
        assertThat(tree.at("/pooled/drivers").size()).isEqualTo(2);
        assertThat(tree.at("/pooled/findings").size()).isPositive();
    }

    @Test
    void whatBothHaveIsTheCarsInTextAndOnThePage() {
        PooledAnswer answer = answer("Ada", "Bo");
        String text = PooledText.write(
                answer,
                Figures.forTerminal(UnitSystem.METRIC),
                Terminal.of(java.util.Map.of("NO_COLOR", "1"), false, 100));
        assertThat(text).contains("Ada", "Bo", "Verdict");
        String html = PooledReport.html(answer, Figures.forPage(UnitSystem.METRIC));
        assertThat(html).contains("id=\"verdict\"", "id=\"pooled\"", "id=\"stints\"", "Ada");
    }

    @Test
    void aDriversNameIsShownAsTextOnly() {
        String html = PooledReport.html(answer("<b>A</b>", "Bo"), Figures.forPage(UnitSystem.METRIC));
        assertThat(html).doesNotContain("<b>A</b>").contains("&lt;b&gt;A&lt;/b&gt;");
    }
}
