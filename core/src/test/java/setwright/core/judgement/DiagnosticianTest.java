package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.baseline.Baseline;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;

/** The whole judgement on invented stints whose answer is known. */
final class DiagnosticianTest {
    private static final double CLEAR_STEP = Math.toRadians(1.8);

    private static Diagnosis diagnose(Drive drive) {
        return Diagnostician.diagnose(drive.stint(), Drive.sheet());
    }

    private static List<Finding> suspected(Diagnosis diagnosis) {
        return diagnosis.grounds().considered().stream()
                .filter(finding -> finding.probability() > 0.65)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void findsNothingOnAHealthyCar(long seed) {
        Diagnosis diagnosis = diagnose(new Drive(seed));

        assertThat(diagnosis.repeatability().repeatable()).isTrue();
        assertThat(diagnosis.findings()).isEmpty();
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void suspectsTheRearThatStepsOutOnEntryWhereNothingElseIsKnownOfTheCar(long seed) {
        Diagnosis diagnosis = diagnose(new Drive(seed).rearSteps(CLEAR_STEP, corner -> corner <= 4));

        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(diagnosis.reason()).contains("signs of oversteer on entry");
        Finding first = suspected(diagnosis).get(0);
        assertThat(first.balance()).isEqualTo(BalanceSign.OVERSTEER);
        assertThat(first.phase()).isEqualTo(Phase.ENTRY);
        assertThat(first.corners()).containsExactly(1, 2, 3, 4);
        assertThat(first.trigger()).isEqualTo(Trigger.BRAKE_RELEASE);
        assertThat(first.lapShare()).isGreaterThan(0.9);
        assertThat(first.probability()).as("cars in good order do it, too").isBetween(0.7, 0.9);
        assertThat(first.sizeRad()).isBetween(0.6 * CLEAR_STEP, 1.2 * CLEAR_STEP);
        assertThat(first.price().low()).isLessThanOrEqualTo(first.price().seconds());
        assertThat(first.price().high()).isGreaterThanOrEqualTo(first.price().seconds());
    }

    @Test
    void doesNotChangeTheCarForOneCorner() {
        Diagnosis diagnosis = diagnose(new Drive(21).rearSteps(CLEAR_STEP, corner -> corner == 3));

        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
        assertThat(diagnosis.findings()).isEmpty();
        assertThat(diagnosis.inOneCorner()).first().satisfies(seen -> {
            assertThat(seen.corners()).containsExactly(3);
            assertThat(seen.phase()).isEqualTo(Phase.ENTRY);
            assertThat(seen.lapShare()).isGreaterThan(0.9);
            assertThat(seen.probability()).as("as likely not the car's").isLessThanOrEqualTo(0.5);
        });
    }

    /** Where laps in good order do not show it, it came since. */
    @Test
    void oneCornerCountsWhereItCameSinceTheBaseline() {
        Drive steps = new Drive(21).rearSteps(CLEAR_STEP, corner -> corner == 3);
        Baseline good = Baseline.of("stint 7", new Drive(22).stint(), Drive.sheet());
        Diagnosis diagnosis = Diagnostician.diagnose(steps.stint(), Drive.sheet(), Optional.of(good));

        assertThat(diagnosis.findings())
                .anySatisfy(finding -> assertThat(finding.corners()).containsExactly(3));
        assertThat(diagnosis.inOneCorner()).isEmpty();
        assertThat(diagnose(new Drive(1)).inOneCorner()).isEmpty();
    }

    @Test
    void findsTheFrontThatPushesEverywhere() {
        Diagnosis diagnosis = diagnose(new Drive(31).pushes(Math.toRadians(2.5), corner -> true));

        assertThat(diagnosis.verdict()).isEqualTo(Verdict.CHANGE_THE_CAR);
        Finding first = diagnosis.findings().get(0);
        assertThat(first.balance()).isEqualTo(BalanceSign.UNDERSTEER);
        assertThat(first.phase()).isEqualTo(Phase.MID);
        assertThat(first.speed()).isEqualTo(SpeedRange.ALL);
    }

    @Test
    void coachesADriverWhoIsNotSteady() {
        Diagnosis diagnosis = diagnose(new Drive(41).pace(0.06).rearSteps(CLEAR_STEP, corner -> corner <= 4));

        assertThat(diagnosis.repeatability().repeatable()).isFalse();
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
    }

    /** Laps that cannot judge the car name no problem of it, however clear it looks; the reason says what they hint at. */
    @Test
    void namesNoProblemOfTheCarFromLapsThatCannotJudgeIt() {
        Diagnosis diagnosis = diagnose(new Drive(42).pace(0.06).pushes(Math.toRadians(2.5), corner -> true));

        assertThat(diagnosis.repeatability().repeatable()).isFalse();
        assertThat(suspected(diagnosis)).isNotEmpty();
        assertThat(diagnosis.findings()).noneMatch(Finding::lapWide);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
        assertThat(diagnosis.reason()).contains("cannot judge the car").contains("signs of understeer");
    }

    @Test
    void refusesToJudgeTwoLaps() {
        Diagnosis diagnosis = diagnose(new Drive(51).laps(2).rearSteps(CLEAR_STEP, corner -> true));

        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(diagnosis.reason()).contains("2 laps");
    }

    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63})
    void answersTheSameInTheMirror(long seed) {
        Drive left = new Drive(seed).rearSteps(CLEAR_STEP, corner -> corner % 2 == 1);
        Drive right = new Drive(seed).mirrored().rearSteps(CLEAR_STEP, corner -> corner % 2 == 1);

        List<Finding> asDriven = suspected(diagnose(left));
        List<Finding> mirrored = suspected(diagnose(right));

        // noise is not mirrored with the motion, so sizes may differ by a little; what is found may not
        assertThat(mirrored).hasSameSizeAs(asDriven).isNotEmpty();
        for (int i = 0; i < mirrored.size(); i++) {
            assertThat(mirrored.get(i).corners()).isEqualTo(asDriven.get(i).corners());
            assertThat(mirrored.get(i).phase()).isEqualTo(asDriven.get(i).phase());
            assertThat(mirrored.get(i).balance()).isEqualTo(asDriven.get(i).balance());
            assertThat(mirrored.get(i).trigger()).isEqualTo(asDriven.get(i).trigger());
        }
    }

    @Test
    void namesSawingThatTheCarDoesNotCallFor() {
        Diagnosis diagnosis = diagnose(new Drive(65).saws(corner -> corner == 2));

        assertThat(diagnosis.faults()).anySatisfy(fault -> {
            assertThat(fault.kind()).startsWith("sawing");
            assertThat(fault.corners()).containsExactly(2);
        });
        assertThat(diagnosis.passes())
                .filteredOn(pass -> pass.hands().stream().anyMatch(event -> event.kind() == HandsEvent.Kind.SAWING))
                .allMatch(pass -> pass.corner() == 2)
                .isNotEmpty();
    }

    @Test
    void isNotMisledByASteeringZeroLeftOver() {
        Diagnosis diagnosis =
                diagnose(new Drive(71).steeringZero(Math.toRadians(0.2)).rearSteps(CLEAR_STEP, corner -> corner <= 4));

        assertThat(suspected(diagnosis)).isNotEmpty();
        assertThat(suspected(diagnosis).get(0).corners()).containsExactly(1, 2, 3, 4);
    }

    @Test
    void saysWhyInPlainSentencesWithFigures() {
        Finding first = suspected(diagnose(new Drive(81).rearSteps(CLEAR_STEP, corner -> corner <= 4)))
                .get(0);

        assertThat(first.why()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(first.why().get(0)).contains("4 of the 8 corners").contains("deg");
        assertThat(first.triggers().values().stream().mapToDouble(p -> p).sum())
                .isCloseTo(1.0, org.assertj.core.data.Offset.offset(1.0e-9));
    }
}
