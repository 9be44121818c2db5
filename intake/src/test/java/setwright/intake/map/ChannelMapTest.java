package setwright.intake.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.recording.Quantity;
import setwright.intake.problem.InputProblem;

class ChannelMapTest {

    @Test
    void everyUnitSurvivesWritingAndReading() {
        for (Quantity quantity : Quantity.values()) {
            for (Dimension dimension : Dimension.values()) {
                if (!Dimension.fits(quantity, dimension)) {
                    continue;
                }
                for (Unit unit : Units.of(dimension)) {
                    MapEntry entry = new MapEntry("a \"strange\" \\ header: #1", unit, -1, 2.5);
                    Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
                    entries.put(quantity, entry);
                    ChannelMap map = new ChannelMap(entries);
                    Proposal proposal = new Proposal(
                            map,
                            List.of(new Proposal.Reason(quantity, entry, 0.9, "words\nbroken", "physics")),
                            List.of("a remark\r\nin two lines"));
                    assertThat(ChannelMapFile.parse("map.yaml", ChannelMapFile.write(proposal)))
                            .as("%s in %s", quantity, unit)
                            .isEqualTo(map);
                }
            }
        }
    }

    @Test
    void theLeastThatMayBeWritten() {
        ChannelMap map =
                ChannelMapFile.parse("map.yaml", "channels:\n  speed: {column: v}\n  brake: {column: b, unit: %}\n");
        MapEntry speed = map.entry(Quantity.SPEED).orElseThrow();
        assertThat(speed.unit().symbol()).isEqualTo("m/s");
        assertThat(speed.sign()).isEqualTo(1);
        assertThat(map.entry(Quantity.BRAKE).orElseThrow().unit().symbol()).isEqualTo("%");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "speed: {column: v, unit: bar} | 2 | a unit of speed",
                "sped: {column: v} | 2 | Did you mean 'speed'",
                "speed: {unit: m/s} | 2 | the header of a column",
                "speed: {column: v, sign: 2} | 2 | 1 or -1",
                "speed: {column: v, offset: much} | 2 | a number",
                "speed: {column: v, units: m/s} | 2 | Did you mean 'unit'",
                "speed: v | 2 | column, unit, sign and offset"
            })
    void mistakesAreNamedWithTheirLine(String entry, long line, String message) {
        InputProblem problem = catchThrowableOfType(
                InputProblem.class, () -> ChannelMapFile.parse("map.yaml", "channels:\n  " + entry + "\n"));
        assertThat(problem).isNotNull();
        assertThat(problem.row()).hasValue(line);
        assertThat(problem.getMessage()).contains(message);
    }
}
