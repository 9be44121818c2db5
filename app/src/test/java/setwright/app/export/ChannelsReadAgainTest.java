package setwright.app.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.export.Material.Laps;
import setwright.app.scoreboard.Home;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** A recording taken out and read by our own reader is the same recording. */
final class ChannelsReadAgainTest {
    private static final Path CASE = Home.cases().resolve("practice-01");

    /**
     * Ten digits are printed, and the factors between units are known to as many; what calibration finds again on laps that
     * were calibrated already comes on top, and is far below what any sensor resolves.
     */
    private static final double OF_THE_LARGEST = 1e-6;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void aRecordingComesInAsItWentOut(UnitSystem units) throws IOException {
        Optional<CarSheet> car = Optional.of(CarSheetReader.read(CASE.resolve("car.yaml")));
        Recording before = RecordingReader.read(CASE.resolve("stint1.csv.gz"), Optional.empty(), car)
                .recording();
        Path csv = folder.resolve("laps.csv");
        new TableWriter(new ChannelsTable(), material(before), Format.CSV, units).write(csv);
        Recording after = RecordingReader.read(csv, Optional.empty(), car).recording();
        assertThat(after.quantities()).isEqualTo(before.quantities());
        assertThat(after.sampleRateHz()).isEqualTo(before.sampleRateHz());
        assertThat(after.sampleCount()).isEqualTo(before.sampleCount());
        for (Quantity quantity : before.quantities()) {
            Channel was = before.channel(quantity);
            Channel is = after.channel(quantity);
            double largest = 0.0;
            for (int i = 0; i < was.size(); i++) {
                largest = Math.max(largest, Double.isNaN(was.get(i)) ? 0.0 : Math.abs(was.get(i)));
            }
            for (int i = 0; i < was.size(); i++) {
                if (Double.isNaN(was.get(i))) {
                    assertThat(is.get(i)).as(quantity.words()).isNaN();
                } else {
                    assertThat(is.get(i))
                            .as("%s, sample %d", quantity.words(), i)
                            .isCloseTo(was.get(i), within(OF_THE_LARGEST * largest));
                }
            }
        }
    }

    private static Material material(Recording recording) {
        Answer example = Example.answer();
        Diagnosis other = example.diagnosis();
        Diagnosis diagnosis = new Diagnosis(
                StintBuilder.build(recording),
                other.trace(),
                List.of(),
                other.repeatability(),
                List.of(),
                List.of(),
                other.verdict(),
                other.reason());
        return Material.of(List.of(new Laps(
                recording.name(), new Answer(diagnosis, example.car(), List.of(), List.of()), Optional.empty())));
    }
}
