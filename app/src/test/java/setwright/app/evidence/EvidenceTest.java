package setwright.app.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import setwright.app.example.Example;
import setwright.core.circuit.Corner;
import setwright.core.handling.Phase;

final class EvidenceTest {
    private static final Answer ANSWER = Example.answer();
    private static final BalanceTable TABLE = BalanceTable.of(ANSWER.diagnosis());

    @Test
    void medianAndScatterIgnoreWhatIsMissing() {
        Spread spread = Spread.of(new double[] {3.0, Double.NaN, 1.0, 2.0});
        assertThat(spread.median()).isEqualTo(2.0);
        assertThat(spread.scatter()).isEqualTo(1.4826);
        assertThat(spread.count()).isEqualTo(3);
    }

    @Test
    void twoValuesGiveNoInterval() {
        assertThat(Spread.of(new double[] {1.0, 1.1}).clearOfZero()).isFalse();
        assertThat(Spread.of(new double[0]).known()).isFalse();
    }

    /** The interval is meant to hold the true median in 95 of 100 samples. */
    @Test
    void theIntervalHoldsTheTruthAboutAsOftenAsItSays() {
        long seed = 11L;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int held = 0;
        int trials = 4000;
        for (int i = 0; i < trials; i++) {
            double[] values =
                    random.doubles(12).map(u -> random.nextGaussian(0.3, 1.0)).toArray();
            Spread spread = Spread.of(values);
            if (spread.low() < 0.3 && spread.high() > 0.3) {
                held++;
            }
        }
        // The scatter of 12 values is itself rough, so a few per cent either way are expected.
        assertThat(held / (double) trials).as("seed " + seed).isBetween(0.90, 0.99);
    }

    @Test
    void theTableShowsWhatTheCarWasGiven() {
        assertThat(TABLE.rows()).hasSize(13);
        BalanceTable.Row slow = TABLE.row(4).orElseThrow();
        // 0.13 deg scatter over 12 laps leaves a median within about 0.05 deg, taken three times.
        assertThat(Math.toDegrees(slow.cell(Phase.ENTRY).orElseThrow().excess().median()))
                .isCloseTo(-0.46, within(0.15));
        assertThat(slow.worst().orElseThrow().phase()).isEqualTo(Phase.ENTRY);
        assertThat(slow.passes()).hasSize(12);
        assertThat(TABLE.row(6).orElseThrow().repeatable()).isFalse();
    }

    @Test
    void tracesLieBetweenTheLowestAndTheHighestLap() {
        Corner corner = TABLE.row(4).orElseThrow().corner();
        CornerTraces traces = new TraceBuilder(ANSWER).build(corner);
        assertThat(traces.laps()).hasSize(12).doesNotContain(0, 9);
        for (TraceKind kind : TraceKind.values()) {
            CornerTraces.Curve curve = traces.curve(kind);
            for (int i = 0; i < traces.stationM().size(); i++) {
                double typical = curve.typical().get(i);
                if (Double.isFinite(typical)) {
                    assertThat(typical)
                            .isBetween(curve.low().get(i), curve.high().get(i));
                }
            }
        }
    }

    @Test
    void aTraceShowsTheSpeedThatWasDrivenThere() {
        Corner corner = TABLE.row(4).orElseThrow().corner();
        CornerTraces traces = new TraceBuilder(ANSWER).build(corner);
        double[] speed = traces.curve(TraceKind.SPEED).typical().toArray();
        double lowest = java.util.Arrays.stream(speed).min().orElseThrow();
        // A point every couple of metres may miss the slowest place by a little.
        assertThat(lowest).isCloseTo(TABLE.row(4).orElseThrow().lowestSpeedMps(), within(0.5));
    }

    @Test
    void steeringIntoTheCornerIsPositiveOnBothHands() {
        for (BalanceTable.Row row : TABLE.rows()) {
            CornerTraces traces = new TraceBuilder(ANSWER).build(row.corner());
            double[] steer = traces.curve(TraceKind.STEERING).typical().toArray();
            assertThat(steer[nearest(traces, row.corner().apexM())]).isPositive();
        }
    }

    private static int nearest(CornerTraces traces, double station) {
        int best = 0;
        for (int i = 0; i < traces.stationM().size(); i++) {
            if (Math.abs(traces.stationM().get(i) - station)
                    < Math.abs(traces.stationM().get(best) - station)) {
                best = i;
            }
        }
        return best;
    }
}
