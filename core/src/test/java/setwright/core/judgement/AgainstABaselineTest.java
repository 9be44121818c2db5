package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.baseline.Baseline;
import setwright.core.car.Sheets;
import setwright.core.explanation.Explainer;
import setwright.core.explanation.VerdictExplainer;
import setwright.core.handling.Phase;
import setwright.core.standing.SetupStanding.Yard;

/** The judgement on invented stints that are held against another stint of the same car. */
final class AgainstABaselineTest {
    private static final double SMALL = Math.toRadians(0.4);
    private static final double ALWAYS = Math.toRadians(2.5);

    private static Diagnosis diagnose(Drive drive, Drive good) {
        Baseline baseline = Baseline.of("stint 7", good.stint(), Drive.sheet());
        return Diagnostician.diagnose(drive.stint(), Drive.sheet(), Optional.of(baseline));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theSameCarOnAnotherDayIsInGoodOrder(long seed) {
        Diagnosis diagnosis = diagnose(new Drive(seed), new Drive(seed + 50L));
        assertThat(diagnosis.findings()).isEmpty();
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
        assertThat(diagnosis.reason()).contains("stint 7");
        assertThat(VerdictExplainer.explain(diagnosis))
                .anySatisfy(reason -> assertThat(reason.sentence()).contains("stint 7"));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void isSurerOfASmallFaultThanWithoutOne(long seed) {
        Drive pushes = new Drive(seed).pushes(SMALL, corner -> true);
        Diagnosis alone = Diagnostician.diagnose(pushes.stint(), Drive.sheet());
        Diagnosis held = diagnose(new Drive(seed).pushes(SMALL, corner -> true), new Drive(seed + 50L));
        assertThat(held.verdict()).isEqualTo(Verdict.CHANGE_THE_CAR);
        Finding first = held.findings().get(0);
        assertThat(first.balance()).isEqualTo(BalanceSign.UNDERSTEER);
        assertThat(first.sizeRad()).isEqualTo(SMALL, within(0.4 * SMALL));
        Finding guess = alone.grounds().level().orElseThrow();
        assertThat(first.probability()).isGreaterThan(Math.max(0.8, guess.probability()));
        assertThat(first.sizeHighRad() - first.sizeLowRad())
                .isLessThan(0.6 * (guess.sizeHighRad() - guess.sizeLowRad()));
        assertThat(first.sizeLowRad()).isLessThan(SMALL);
        assertThat(first.sizeHighRad()).isGreaterThan(0.7 * SMALL);
        assertThat(Explainer.explain(held, first).reasons())
                .anySatisfy(reason -> assertThat(reason.sentence()).contains("in the baseline"));
    }

    /** Every second corner is slow, from the first on, the others are fast. */
    @ParameterizedTest
    @CsvSource({"11, 1, LOW", "12, 1, LOW", "11, 0, HIGH", "12, 0, HIGH", "11, -1, ALL", "12, -1, ALL"})
    void isNamedAtTheSpeedsThatShowIt(long seed, int remainder, SpeedRange speed) {
        Diagnosis held = diagnose(
                new Drive(seed).pushes(2.0 * SMALL, corner -> remainder < 0 || corner % 2 == remainder),
                new Drive(seed + 50L));
        assertThat(held.findings().get(0).speed()).isEqualTo(speed);
    }

    /** A rear that steps out of one corner on the good day as well is nothing that came since. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aSlideInOneCornerCountsWhereItCameSince(long seed) {
        Drive steps = new Drive(seed).rearSteps(ALWAYS, corner -> corner == 3);
        Diagnosis since = diagnose(steps, new Drive(seed + 50L));
        assertThat(since.findings()).anyMatch(finding -> !finding.lapWide());
        assertThat(since.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);

        Diagnosis both = diagnose(
                new Drive(seed).rearSteps(ALWAYS, corner -> corner == 3),
                new Drive(seed + 50L).rearSteps(ALWAYS, corner -> corner == 3));
        assertThat(both.findings()).isEmpty();
    }

    /** What repeats is the middle over the corners: one that is taken otherwise than on the other day says nothing about the car. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void aSingleCornerIsNoProblemOfTheLap(long seed) {
        Diagnosis held = diagnose(new Drive(seed).pushes(ALWAYS, corner -> corner == 3), new Drive(seed + 50L));
        assertThat(held.findings()).noneMatch(Finding::lapWide);
        assertThat(held.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }

    @Test
    void aCarThatAlwaysPushedIsAsItWas() {
        Diagnosis alone = Diagnostician.diagnose(
                new Drive(31).pushes(ALWAYS, corner -> true).stint(), Drive.sheet());
        assertThat(alone.findings()).isNotEmpty();

        Diagnosis held =
                diagnose(new Drive(31).pushes(ALWAYS, corner -> true), new Drive(32).pushes(ALWAYS, corner -> true));
        assertThat(held.findings()).isEmpty();
    }

    @Test
    void whatIsDrivenOtherwiseIsSaidWhereItMatters() {
        Finding slower = diagnose(new Drive(71).top(42.0), new Drive(72))
                .grounds()
                .level()
                .orElseThrow();
        assertThat(slower.phase()).isEqualTo(Phase.ENTRY);
        assertThat(slower.why()).anyMatch(why -> why.contains("driven otherwise there than in the baseline"));
        Finding alike = diagnose(new Drive(71), new Drive(72)).grounds().level().orElseThrow();
        assertThat(alike.why()).noneMatch(why -> why.contains("driven otherwise"));
    }

    private static Diagnosis on(String tyres, Drive drive) {
        Baseline baseline = Baseline.of("stint 7", new Drive(62).stint(), Sheets.on("red", Drive.sheet()));
        return Diagnostician.diagnose(drive.stint(), Sheets.on(tyres, Drive.sheet()), Optional.of(baseline));
    }

    /** Who cannot use a car drives it slower, and its balance looks sound. */
    @Test
    void theSameBalanceInSlowerLapsIsNoProofOnceSomethingWasChanged() {
        Diagnosis slower = on("blue", new Drive(61).top(46.0));
        assertThat(slower.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(slower.reason()).contains("stint 7", "s slower (", "Changed since: front tyre compound");
        assertThat(slower.grounds().lost().orElseThrow().lowS()).isPositive();

        assertThat(on("blue", new Drive(61)).verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }

    @Test
    void slowerLapsWithTheSameSetupAreSaidToBeSlower() {
        Diagnosis slower = on("red", new Drive(61).top(46.0));
        assertThat(slower.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
        assertThat(slower.reason()).contains("s slower (", "with the same setup");
    }

    /** A car that brakes from a lower speed shows other angles on the way in, and nothing is wrong with it. */
    @ParameterizedTest
    @ValueSource(doubles = {46.0, 42.0})
    void theSameCarAtAnotherSpeedIsAsItWas(double top) {
        Diagnosis slower = diagnose(new Drive(71).top(top), new Drive(72));
        assertThat(slower.grounds().level().map(Finding::probability).orElse(0.0))
                .isLessThan(0.5);
        assertThat(slower.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }

    @Test
    void theGroundsSayWhatItWasHeldAgainst() {
        Diagnosis held = diagnose(new Drive(41), new Drive(42));
        assertThat(held.grounds().baseline().map(Baseline::name)).contains("stint 7");
        assertThat(held.grounds().standing().yard()).isEqualTo(Yard.BASELINE);
        assertThat(held.grounds().standing().isUnknown()).isFalse();
    }
}
