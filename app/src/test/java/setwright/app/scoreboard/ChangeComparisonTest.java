package setwright.app.scoreboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** How predicted changes are scored, on changes made up for it. */
final class ChangeComparisonTest {
    private static final ChangeCell CELL = new ChangeCell(SpeedClass.LOW, Phase.MID);

    @TempDir
    private java.nio.file.Path folder;

    /** Seven items turned both ways; what both directions have in common is 0.01 for five of them, and more for two. */
    private final List<Truth.Change> changes = new ArrayList<>();

    @BeforeEach
    void makeChanges() {
        double[] effects = {0.30, 0.20, 0.10, 0.05, 0.025, 0.02, 0.01};
        double[] common = {0.01, 0.01, -0.01, 0.01, -0.01, 0.5, 0.001};
        for (int i = 0; i < effects.length; i++) {
            changes.add(change("item" + i, 4, 6, effects[i] + common[i], 0.1 * (i + 1), 0));
            changes.add(change("item" + i, 4, 2, -effects[i] + common[i], -0.1 * (i + 1), 0));
        }
    }

    @Test
    void noiseIsTheMedianSizeOfWhatBothDirectionsShare() {
        assertThat(ChangeNoise.clearAboveDeg(changes, CELL).orElseThrow())
                .isCloseTo(2 * Math.sqrt(4.0 / 3.0) * 1.4826 * 0.01, within(1e-12));
    }

    @Test
    void anOffsetCommonToAllItemsIsNoise() {
        List<Truth.Change> moved = changes.stream()
                .map(c -> change(c.item(), c.from(), c.to(), c.balanceDeg(CELL).orElseThrow() + 1.0, 0.0, 0))
                .toList();
        assertThat(ChangeNoise.clearAboveDeg(moved, CELL).orElseThrow()).isGreaterThan(2 * 1.4826 * 0.9);
    }

    @Test
    void turnsOfUnequalSizeAreWeighted() {
        // Exactly linear, 0.1 deg per unit: nothing in common, whatever the sizes.
        List<Truth.Change> linear = IntStream.range(0, 5)
                .boxed()
                .flatMap(i -> List.of(
                        change("item" + i, 4, 4 + 2 * (i + 1), 0.2 * (i + 1), 0, 0),
                        change("item" + i, 4, 3, -0.1, 0, 0))
                        .stream())
                .toList();
        assertThat(ChangeNoise.clearAboveDeg(linear, CELL).orElseThrow()).isEqualTo(0.01);
    }

    @Test
    void fourPairsAreTooFewToTellTheNoise() {
        assertThat(ChangeNoise.clearAboveDeg(changes.subList(0, 8), CELL)).isEmpty();
        assertThat(ChangeNoise.clearAboveDeg(changes, new ChangeCell(SpeedClass.HIGH, Phase.MID)))
                .isEmpty();
    }

    @Test
    void onlyEffectsClearOfNoiseCountAndASpinLeaves() {
        changes.add(change("item9", 4, 6, 3.0, 9.0, 1));
        ChangeComparison all = ChangeComparison.of("case", truth(), Optional.of(perfect()));

        assertThat(all.spun()).isEqualTo(1);
        assertThat(all.lapTime()).hasSize(14);
        assertThat(ChangeComparison.clear(all.lapTime()))
                .as("0.1 s is not beyond twice the noise of 0.05 s")
                .hasSize(12);
        // 0.030 beyond 0.0297: 0.31, -0.29, 0.21, -0.19, 0.09, -0.11, 0.06, -0.04, -0.035 and the two moved by 0.5
        assertThat(ChangeComparison.right(ChangeComparison.clear(all.balance())))
                .isEqualTo(new Count(11, 11));
        assertThat(all.lapTimeRanks()).isCloseTo(1.0, within(1e-12));
        assertThat(all.meanRanks()).isCloseTo(1.0, within(1e-12));
    }

    @Test
    void anEffectIsInsideWhenItsIntervalAndItsNoiseTogetherReachTheTruth() {
        Truth.Change turned = change("item", 4, 6, 0.5, 0, 0);
        Effect answer = new Effect(0.2, 0.1, 0.5, 0.99);
        assertThat(new ChangeEffect(turned, "", 0.5, 0.0, Optional.of(answer)).inside())
                .isTrue();
        assertThat(new ChangeEffect(turned, "", 0.05, 0.0, Optional.of(answer)).inside())
                .as("the interval is not the same on both sides")
                .isFalse();
        assertThat(new ChangeEffect(turned, "", 0.05, 0.2, Optional.of(answer)).inside())
                .as("hypot(0.1, 1.28 * 0.1) = 0.162 reaches 0.15")
                .isTrue();
        assertThat(new ChangeEffect(turned, "", 0.5, 0.2, Optional.empty()).inside())
                .isFalse();
    }

    @Test
    void wrongSignsAndMissingAnswersAreMisses() {
        List<Prediction> answers = new ArrayList<>(perfect());
        answers.set(0, prediction(-0.31, 0.99, 0.1)); // wrong and claimed
        answers.set(1, prediction(0.29, 0.6, -0.1)); // wrong, not claimed
        answers.set(2, prediction(0.0, 1.0, 0.1)); // says nothing, whatever its draws
        ChangeComparison all = ChangeComparison.of("case", truth(), Optional.of(answers.subList(0, 13)));

        List<Row> rows = ChangeRule.judge(all);
        assertThat(rows.get(0).counts()).containsEntry(Measure.CHANGED_BALANCE, new Count(8, 11));
        assertThat(rows.get(1).counts()).containsEntry(Measure.CHANGED_BALANCE_SURE, new Count(8, 9));
        assertThat(rows.get(3).counts())
                .as("the last one has no answer")
                .containsEntry(Measure.CHANGED_TIME, new Count(11, 12));
        assertThat(rows.get(0).answer()).startsWith("worst: item0 4 to 6 low mid +0.31 as -0.31");
        assertThat(ChangeTables.worst(List.of(all)).rows().get(0))
                .contains("item0 4 to 6", "low mid", "+0.310", "0.99");
        assertThat(ChangeTables.full(all).text()).contains("+0.310* -0.310 (99) X");
    }

    /** Every change half a second slower: the run they are compared with was lucky. */
    @Test
    void aLuckyReferenceRunDropsOutOfUpAgainstDown() {
        List<Prediction> answers = perfect();
        changes.replaceAll(
                c -> change(c.item(), c.from(), c.to(), c.balanceDeg(CELL).orElseThrow(), c.lapTimeDeltaS() + 0.5, 0));
        ChangeComparison all = ChangeComparison.of("case", truth(), Optional.of(answers));
        assertThat(ChangeComparison.right(ChangeComparison.clear(all.lapTime())).share())
                .isLessThan(0.8);
        assertThat(all.lapTimeUpAgainstDown()).isEqualTo(new Count(7, 7));
    }

    @Test
    void withoutAPredictorNothingIsMeasured() {
        assertThat(ChangeRule.judge(ChangeComparison.of("case", truth(), Optional.empty())))
                .isEmpty();
    }

    @Test
    void theTruthOfACaseIsReadWithGapsWhereTheLapHasNoSuchPhase() throws Exception {
        Truth truth = Truth.read(java.nio.file.Files.writeString(folder.resolve("truth"), """
                {"lap_time_noise_s": 0.02, "changes": [{"item": "front_bar", "from": 4, "to": 1, "steps": -3,
                  "lap_time_delta_s": -0.1, "spins": 0, "balance_delta_deg": {"high": {"braking": null, "mid": 0.1}}}]}
                """));
        Truth.Change change = truth.triedChanges().get(0);
        assertThat(change.balanceDeg(new ChangeCell(SpeedClass.HIGH, Phase.BRAKING)))
                .isEmpty();
        assertThat(change.balanceDeg(new ChangeCell(SpeedClass.HIGH, Phase.MID)))
                .hasValue(0.1);
        assertThat(change.balanceDeg(CELL)).isEmpty();
        assertThat(truth.lapTimeNoiseS()).isEqualTo(0.02);
    }

    private List<Prediction> perfect() {
        return changes.stream()
                .map(c -> prediction(c.balanceDeg(CELL).orElseThrow(), 1.0, c.lapTimeDeltaS()))
                .toList();
    }

    private Truth truth() {
        return new Truth(
                "", 0, 0, 0, List.of(), null, null, Map.of(), Map.of(), Map.of(), List.of(), null, null, 0.05, changes);
    }

    private static Truth.Change change(String item, double from, double to, double deg, double lapTimeS, int spins) {
        return new Truth.Change(item, from, to, lapTimeS, spins, Map.of("low", Map.of("mid", deg)));
    }

    private static Prediction prediction(double deg, double sure, double lapTimeS) {
        double rad = Math.toRadians(deg);
        Channel none = Channel.of(new double[0]);
        return new Prediction(
                List.of(),
                List.of(),
                List.of(new PhaseEffect(
                        Phase.MID,
                        Optional.of(SpeedClass.LOW),
                        new Effect(rad, rad - 0.001, rad + 0.001, rad >= 0 ? sure : 1.0 - sure))),
                new Effect(lapTimeS, lapTimeS - 0.01, lapTimeS + 0.01, lapTimeS > 0 ? 1.0 : 0.0),
                List.of(1.0),
                new LapEffect(none, none, none, none, none, none),
                List.of(),
                List.of());
    }
}
