package setwright.app.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.example.Example;
import setwright.core.circuit.Circuit;
import setwright.intake.problem.InputProblem;

final class CircuitFileTest {
    @TempDir
    private Path folder;

    @Test
    void comesBackAsItWas() throws IOException {
        Circuit circuit = Example.answer().diagnosis().stint().circuit();
        Circuit placed =
                new Circuit(circuit.name(), circuit.line(), circuit.corners(), new Circuit.Geographic(0.7, -1.1));
        Path file = folder.resolve("circuit.json");
        CircuitFile.write(file, placed);
        Circuit back = CircuitFile.read(file);
        assertThat(back.name()).isEqualTo(placed.name());
        assertThat(back.corners()).isEqualTo(placed.corners());
        assertThat(back.line().nodeCount()).isEqualTo(placed.line().nodeCount());
        for (int i = 0; i < back.line().nodeCount(); i++) {
            assertThat(back.line().x(i)).isEqualTo(placed.line().x(i));
            assertThat(back.line().curvature(i)).isEqualTo(placed.line().curvature(i));
        }
        double roundOff = 1e-15;
        Circuit.Geographic anchor = (Circuit.Geographic) back.anchor();
        assertThat(anchor.latitudeRad()).isCloseTo(0.7, org.assertj.core.data.Offset.offset(roundOff));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"version\": 1}",
                "not json",
                "[]",
                "{\"version\":2,\"name\":\"a\",\"anchor\":{\"kind\":\"none\",\"latitude_deg\":0,\"longitude_deg\":0},\"line\":{\"step_m\":1,\"x_m\":[],\"y_m\":[],\"heading_rad\":[],\"curvature_per_m\":[]},\"corners\":[]}",
                "{\"version\":1,\"name\":\"a\",\"anchor\":{\"kind\":\"none\",\"latitude_deg\":0,\"longitude_deg\":0},\"line\":{\"step_m\":1,\"x_m\":[1,2],\"y_m\":[1],\"heading_rad\":[],\"curvature_per_m\":[]},\"corners\":[]}",
                "{\"version\":1,\"name\":\"a\",\"anchor\":{\"kind\":\"none\",\"latitude_deg\":0,\"longitude_deg\":0},\"line\":{\"step_m\":1,\"x_m\":[null],\"y_m\":[1],\"heading_rad\":[],\"curvature_per_m\":[]},\"corners\":[]}"
            })
    void anotherFileIsRefusedWithItsName(String content) throws IOException {
        Path file = folder.resolve("other.json");
        Files.writeString(file, content);
        assertThatThrownBy(() -> CircuitFile.read(file))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("other.json")
                .hasMessageContaining("--save-circuit");
    }
}
