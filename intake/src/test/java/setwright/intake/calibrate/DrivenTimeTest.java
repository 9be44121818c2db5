package setwright.intake.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.recording.Quantity;

class DrivenTimeTest {
    private static final double RATE_HZ = 20.0;
    private static final double SLOWEST_MPS = 6.0;

    @Test
    void aStintIsLookedAtWhole() {
        double[] speed = driven(2400.0);
        assertThat(DrivenTime.of(speed, SLOWEST_MPS, RATE_HZ).of(speed)).isEqualTo(speed);
    }

    @Test
    void ofHoursFortyMinutesThatAreSpreadOverThemAndNothingWhileItStands() {
        double[] speed = driven(6.0 * 3600.0);
        Arrays.fill(speed, 0, speed.length / 3, 0.0);
        double[] place = new double[speed.length];
        Arrays.setAll(place, i -> i);
        double[] seen = Arrays.stream(DrivenTime.of(speed, SLOWEST_MPS, RATE_HZ).of(place))
                .filter(Double::isFinite)
                .toArray();
        assertThat(seen.length / RATE_HZ).isEqualTo(DrivenTime.ENOUGH_S);
        assertThat(seen[0]).isGreaterThanOrEqualTo(speed.length / 3.0 - 120.0 * RATE_HZ);
        assertThat(seen[seen.length - 1]).isGreaterThan(0.9 * speed.length);
        assertThat(Arrays.stream(seen)
                        .filter(at -> at < speed.length * 2.0 / 3.0)
                        .count())
                .isCloseTo(seen.length / 2, within((long) (150.0 * RATE_HZ)));
    }

    @Test
    void piecesThatDoNotFollowEachOtherArePartedByMoreThanAnyDelay() {
        double[] speed = driven(6.0 * 3600.0);
        double[] place = new double[speed.length];
        Arrays.setAll(place, i -> i);
        double[] seen = DrivenTime.of(speed, SLOWEST_MPS, RATE_HZ).of(place);
        int gap = (int) (2.5 * RATE_HZ);
        for (int i = 0; i + gap < seen.length; i++) {
            if (Double.isFinite(seen[i]) && Double.isFinite(seen[i + gap])) {
                assertThat(seen[i + gap] - seen[i]).isEqualTo(gap);
            }
        }
    }

    @Test
    void whereTheCarHardlyMovesAllIsLookedAt() {
        double[] speed = new double[(int) (4.0 * 3600.0 * RATE_HZ)];
        System.arraycopy(driven(600.0), 0, speed, 5000, (int) (600.0 * RATE_HZ));
        assertThat(DrivenTime.of(speed, SLOWEST_MPS, RATE_HZ).of(speed)).isEqualTo(speed);
    }

    @Test
    void constantsOfHoursAreFoundAndTakenOutOfAllOfThem() {
        double[] speed = driven(5.0 * 3600.0);
        Random noise = new Random(1L);
        double[] yaw = new double[speed.length];
        double[] lateral = new double[speed.length];
        double[] late = new double[speed.length];
        int delay = (int) RATE_HZ;
        for (int i = 0; i < speed.length; i++) {
            double t = i / RATE_HZ;
            double turn = 0.3 * Math.sin(0.31 * t) + 0.1 * Math.sin(0.83 * t);
            yaw[i] = turn + 0.005 * noise.nextGaussian();
            lateral[i] = speed[i] * turn + 0.4 + 0.2 * noise.nextGaussian();
        }
        System.arraycopy(lateral, 0, late, delay, speed.length - delay);
        Map<Quantity, double[]> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.SPEED, speed);
        channels.put(Quantity.YAW_RATE, yaw);
        channels.put(Quantity.LATERAL_ACCELERATION, late);
        Bench bench = new Bench(RATE_HZ, channels);
        Calibrator.run(bench);
        double[] corrected = bench.get(Quantity.LATERAL_ACCELERATION);
        for (int from : new int[] {0, speed.length / 2, speed.length - 20_000}) {
            double off = 0.0;
            for (int i = from; i < from + 10_000; i++) {
                off += (corrected[i] - (lateral[i] - 0.4)) / 10_000;
            }
            assertThat(off).isCloseTo(0.0, within(0.03));
        }
    }

    private static double[] driven(double seconds) {
        double[] speed = new double[(int) (seconds * RATE_HZ)];
        Arrays.setAll(speed, i -> 35.0 + 15.0 * Math.sin(0.11 * i / RATE_HZ));
        return speed;
    }
}
