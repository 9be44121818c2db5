package setwright.app.server.stint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.server.stint.LapColumns.LapAbout;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;

/** What the page draws is what was recorded. */
final class LapColumnsTest {
    private static final Answer ANSWER = Example.answer();
    private static final Stint STINT = ANSWER.diagnosis().stint();
    private static final LapColumns COLUMNS = LapColumns.of(ANSWER);
    private static final FloatBuffer SAMPLES =
            ByteBuffer.wrap(COLUMNS.samples()).order(ByteOrder.LITTLE_ENDIAN).asFloatBuffer();

    private static float at(LapAbout lap, String column, int sample) {
        int place = COLUMNS.about().columns().indexOf(column);
        return SAMPLES.get((int) lap.from() + place * lap.samples() + sample);
    }

    @Test
    void everySampleOfEveryLapIsThere() {
        List<LapAbout> laps = COLUMNS.about().laps();
        assertThat(laps).hasSameSizeAs(STINT.laps());
        int numbers = laps.stream().mapToInt(LapAbout::samples).sum()
                * COLUMNS.about().columns().size();
        assertThat(SAMPLES.limit()).isEqualTo(numbers);
        for (int l = 0; l < laps.size(); l++) {
            Lap lap = STINT.laps().get(l);
            for (int i = lap.from(); i < lap.to(); i++) {
                assertThat(at(laps.get(l), "speed", i - lap.from()))
                        .isEqualTo((float) ANSWER.diagnosis().trace().speed().get(i));
                assertThat(at(laps.get(l), "time", i - lap.from()))
                        .isEqualTo((float) ((i - lap.from()) * STINT.recording().stepS()));
                assertThat(at(laps.get(l), "offset", i - lap.from()))
                        .isEqualTo((float) STINT.offset().get(i));
            }
        }
    }

    @Test
    void stationsNeverGoBackAndEndOneLapOn() {
        double length = STINT.circuit().line().lengthM();
        for (LapAbout lap : COLUMNS.about().laps()) {
            for (int i = 1; i < lap.samples(); i++) {
                assertThat(at(lap, "station", i)).isGreaterThanOrEqualTo(at(lap, "station", i - 1));
            }
            if (lap.good()) {
                assertThat((double) at(lap, "station", lap.samples() - 1) - at(lap, "station", 0))
                        .isCloseTo(length, within(0.02 * length));
            }
        }
    }

    @Test
    void theMapIsClosedAndOnItsDrawing() {
        LapColumns.MapLine map = COLUMNS.about().map();
        assertThat(map.stepM() * map.x().size())
                .isEqualTo(STINT.circuit().line().lengthM(), within(1e-6));
        assertThat(map.x()).allMatch(x -> x >= 0.0 && x <= 1000.0);
        assertThat(map.y()).allMatch(y -> y >= 0.0 && y <= map.height());
    }
}
