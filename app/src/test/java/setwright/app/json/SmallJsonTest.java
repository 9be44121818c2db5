package setwright.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.scoreboard.Home;
import setwright.core.recording.Quantity;
import setwright.intake.csv.CsvReader;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.map.MapEntry;
import setwright.intake.map.MapProposer;
import setwright.intake.map.Proposal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON of commands that say little. */
final class SmallJsonTest {
    @Test
    void aMapSaysWhatItsYamlSays(@TempDir Path folder) throws IOException {
        Proposal proposal = MapProposer.propose(
                CsvReader.read(Home.cases().resolve("practice-03/stint1.csv.gz")), Optional.empty());
        String json = MapJsonWriter.write(proposal);
        keeps("map", json);
        ChannelMap map =
                ChannelMapFile.read(Files.writeString(folder.resolve("map.yaml"), ChannelMapFile.write(proposal)));
        JsonNode channels = JsonMapper.shared().readTree(json).at("/channels");
        assertThat(channels.size()).isEqualTo(map.entries().size()).isGreaterThan(4);
        for (JsonNode channel : channels) {
            MapEntry entry = map.entries()
                    .get(Quantity.valueOf(channel.at("/quantity").asString().toUpperCase(Locale.ROOT)));
            assertThat(channel.at("/column").asString()).isEqualTo(entry.column());
            assertThat(channel.at("/unit").asString()).isEqualTo(entry.unit().symbol());
            assertThat(channel.at("/sign").asInt()).isEqualTo(entry.sign());
        }
    }

    @Test
    void whatWasDoneIsSaid() throws IOException {
        keeps("amend", DoneJsonWriter.stint(3, "Stint 3 is corrected: driver Bo (was Ines)."));
        keeps("trial-drop", DoneJsonWriter.trial(2, "front_bar 4 to 5", "Trial 2 (front_bar 4 to 5) is given up."));
    }

    private static void keeps(String schema, String json) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs", schema + ".schema.json")), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
    }
}
