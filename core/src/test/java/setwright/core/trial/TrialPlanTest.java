package setwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.judgement.SmallestEffect;

class TrialPlanTest {
    private static final double LAP_S = 90.0;

    /** A/B/A with five laps each and a known deviation of 0.2: standard error 0.10954 (var s² (1/5 + 1/20 + 1/20), common practice). */
    @Test
    void theWeightsOfTheRunsAreThoseOfTheirOrder() {
        assertThat(Math.sqrt(TrialPlan.of("ABA").weights() * 0.04 / 5.0)).isCloseTo(0.10954, within(1e-5));
        assertThat(TrialPlan.of("AB").weights()).isCloseTo(2.0, within(1e-9));
        assertThat(TrialPlan.of("ABABA").weights()).isCloseTo(1.0 / 3.0 + 1.0 / 2.0, within(1e-9));
        assertThat(TrialPlan.of("ABA").letters()).isEqualTo("ABA");
    }

    /** Without scatter between runs two runs are two groups of laps: the published power table for two samples (MRC CBU) holds. */
    @Test
    void withoutScatterBetweenRunsItIsATestOfTwoSamples() {
        for (int laps : List.of(5, 10, 20)) {
            assertThat(TrialPlan.of("AB").leastVisible(laps, 1.0, 1e-9, 0.05))
                    .isCloseTo(SmallestEffect.inDeviations(laps), within(0.05));
        }
        assertThat(TrialPlan.of("AB").lapsFor(1.0, 1.0, 1e-9, 0.05).orElseThrow())
                .isBetween(16, 18);
    }

    @Test
    void moreLapsDoNotBeatTheScatterBetweenRunsButMoreRunsDo() {
        assertThat(TrialPlan.of("AB").lapsFor(0.2, 0.2, 0.09, 0.05)).isEmpty();
        assertThat(TrialPlan.of("ABABABABA").lapsFor(0.2, 0.2, 0.09, 0.05)).isPresent();
    }

    /** Power as planned, within five points, on 1,000 invented trials each. */
    @ParameterizedTest
    @CsvSource({"AB,8,0.3", "ABA,6,0.3", "ABA,10,0.2", "ABABA,5,0.25"})
    void whatIsPlannedIsSeenInFourOfFiveTrials(String order, int laps, double lapS) {
        double runS = 0.001 * LAP_S;
        TrialPlan plan = TrialPlan.of(order);
        double size = plan.leastVisible(laps, lapS, runS, 0.05);
        Random chance = new Random(17);
        int seen = 0;
        for (int trial = 0; trial < 1000; trial++) {
            List<TrialRun> runs = new ArrayList<>();
            for (boolean changed : plan.changed()) {
                double base = LAP_S + runS * chance.nextGaussian() - (changed ? size : 0.0);
                List<TrialLap> made = new ArrayList<>();
                for (int lap = 0; lap < laps; lap++) {
                    made.add(new TrialLap(
                            lap + 2, base + lapS * chance.nextGaussian(), Map.of(), OptionalDouble.empty()));
                }
                runs.add(new TrialRun("run", changed, made));
            }
            seen += TrialJudge.judge(runs, Optional.empty(), Looks.once()).verdict() == TrialVerdict.KEEP ? 1 : 0;
        }
        assertThat(seen).isBetween(750, 850);
    }
}
