package setwright.core.baseline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.judgement.Drive;
import setwright.core.recording.Channel;

/** An angle laid out along the road and asked for over a stretch of it. */
final class RoadBalanceTest {
    /** Of a straight line through cells of 1 m, each with one value: an eighth at either end, over the shortest stretch. */
    private static final double CELLS_M = 0.25 / 1.2;

    /** An angle that is the place itself: its mean over a stretch is the middle of it, however short that is. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStretchCountsAsFarAsItGoes(long seed) {
        Stint stint = new Drive(seed).stint();
        HandlingTrace trace = HandlingTracer.trace(stint, Drive.sheet());
        double[] place = new double[stint.recording().sampleCount()];
        for (int i = 0; i < place.length; i++) {
            place[i] = Math.signum(trace.lateral().get(i)) * stint.station().get(i);
        }
        RoadBalance road = RoadBalance.of(stint, trace, Channel.of(place));
        Random random = new Random(seed);
        for (Corner corner : stint.circuit().corners()) {
            for (int draw = 0; draw < 20; draw++) {
                double from = corner.apexM() - 4.0 * random.nextDouble();
                double to = from + 1.2 + 4.0 * random.nextDouble();
                for (double mean : road.over(from, to, corner.sign())) {
                    assertThat(mean).isEqualTo(0.5 * (from + to), within(CELLS_M));
                }
            }
        }
    }
}
