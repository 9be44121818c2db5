package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;
import setwright.core.explanation.Explainer;
import setwright.core.explanation.Explanation;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding.Cause;

/** Invented stints in which the driver, the car or both changed since the baseline. */
final class FeetSinceTest {
    private static final double DEEP = 1.65;
    private static final double FAR = 0.15;
    private static final double LOOSE = -Math.toRadians(0.5);

    /** Someone who brakes as hard as the tyres allow, so that what he leaves for cornering can be told. */
    private static Drive drive(long seed) {
        return new Drive(seed).brakes(12.0).trails(1.2);
    }

    private static Diagnosis diagnose(Drive drive, long good) {
        return diagnose(drive, good, Drive.sheet(), Drive.sheet());
    }

    private static Diagnosis diagnose(Drive drive, long good, CarSheet then, CarSheet now) {
        Baseline baseline = Baseline.of("stint 7", drive(good).stint(), then);
        return Diagnostician.diagnose(drive.stint(), now, Optional.of(baseline));
    }

    private static List<DrivingFault> since(Diagnosis diagnosis) {
        return diagnosis.faults().stream()
                .filter(fault -> fault.kind().contains("than in the baseline"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theSameFeetAreNoFault(long seed) {
        assertThat(since(diagnose(drive(seed).top(46.0), seed + 50L))).isEmpty();
        assertThat(since(diagnose(drive(seed).pushes(LOOSE, corner -> true), seed + 50L)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aLooseRearThatCameWithADeeperBrakeIsTheDrivers(long seed) {
        Diagnosis diagnosis = diagnose(drive(seed).trails(DEEP).pushes(LOOSE, corner -> true), seed + 50L);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
        Finding first = diagnosis.findings().get(0);
        assertThat(first.cause()).isEqualTo(Cause.DRIVER);
        assertThat(first.balance()).isEqualTo(BalanceSign.OVERSTEER);
        assertThat(first.why())
                .anyMatch(why -> why.contains("brake trailed deeper") && why.contains("Technique comes first"));
        assertThat(diagnosis.grounds().isLevel(first)).isTrue();

        Explanation told = Explainer.explain(diagnosis, first);
        assertThat(told.reasons())
                .anyMatch(reason -> reason.sentence().startsWith("It came with the driving: brake trailed"));
        assertThat(told.reasons()).noneMatch(reason -> reason.sentence().contains("stands on no sheet"));
        assertThat(told.alternatives()).anyMatch(other -> other.why().contains("driven as in the baseline"));

        DrivingFault fault = since(diagnosis).get(0);
        assertThat(fault.byTheBrake()).isTrue();
        assertThat(fault.habit()).isTrue();
        assertThat(fault.corners()).hasSizeGreaterThan(Drive.CORNERS / 2);
        assertThat(fault.unit()).isEqualTo("m");
        assertThat(fault.reaches(Phase.ENTRY)).isTrue();
        assertThat(fault.proofs()).allSatisfy(proof -> assertThat(proof.laps()).isNotEmpty());
    }

    @Test
    void theSameLooseRearWithTheSameFeetIsTheCars() {
        Diagnosis diagnosis = diagnose(drive(11).pushes(LOOSE, corner -> true), 61L);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.CHANGE_THE_CAR);
        assertThat(diagnosis.findings().get(0).cause()).isEqualTo(Cause.CAR);
    }

    /** What other tyres do nobody knows before they were driven: they are not the driver's doing for that. */
    @Test
    void aCarThatWasChangedToSomethingUnknownStaysInQuestion() {
        Diagnosis diagnosis = diagnose(
                drive(11).trails(DEEP).pushes(LOOSE, corner -> true),
                61L,
                Sheets.on("red", Drive.sheet()),
                Sheets.on("blue", Drive.sheet()));
        assertThat(diagnosis.findings().get(0).cause()).isEqualTo(Cause.CAR);
        assertThat(since(diagnosis)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void aThrottleThatOpensFurtherIsSeen(long seed) {
        Diagnosis diagnosis = diagnose(drive(seed).opens(FAR).pushes(LOOSE, corner -> true), seed + 50L);
        DrivingFault fault = since(diagnosis).get(0);
        assertThat(fault.byTheThrottle()).isTrue();
        assertThat(fault.unit()).isEqualTo("share of throttle");
        assertThat(fault.reaches(Phase.ENTRY)).isFalse();
        assertThat(fault.size()).isBetween(0.05, 0.5);
    }

    /** Who brakes deeper and is no slower does nothing wrong. */
    @Test
    void whatDoesNoHarmIsNoFault() {
        assertThat(since(diagnose(drive(31).trails(DEEP), 81L))).isEmpty();
    }

    @Test
    void slowerLapsWithADeeperBrakeAreCoached() {
        Diagnosis diagnosis = diagnose(drive(31).trails(DEEP).top(46.0), 81L);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
        assertThat(diagnosis.reason()).contains("s slower (", "than in the baseline", "brake trailed deeper");
        assertThat(since(diagnosis)).hasSize(1);
    }

    /** What was changed may be why: a driver of a slow car opens the throttle further, as it has more to gain. */
    @Test
    void slowerLapsOfAChangedCarAreNotTheFeets() {
        Diagnosis diagnosis = diagnose(
                drive(31).trails(DEEP).top(46.0),
                81L,
                Sheets.on("red", Drive.sheet()),
                Sheets.on("blue", Drive.sheet()));
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        assertThat(since(diagnosis)).isEmpty();
    }

    @Test
    void tooFewLapsOfTheBaselineTellNothing() {
        Baseline two = Baseline.of("two laps", drive(9L).laps(2).stint(), Drive.sheet());
        Drive deep = drive(8L).trails(DEEP).top(46.0);
        Diagnosis diagnosis = Diagnostician.diagnose(deep.stint(), Drive.sheet(), Optional.of(two));
        assertThat(since(diagnosis)).isEmpty();
    }

    /** A corner in a lap is a place, not a way to drive. */
    @Test
    void proofsNameTheLapsThatShowIt() {
        DrivingFault fault = since(diagnose(drive(11).trails(DEEP).pushes(LOOSE, corner -> true), 61L))
                .get(0);
        assertThat(fault.proofs()).allSatisfy(proof -> {
            assertThat(proof.laps())
                    .isSubsetOf(IntStream.rangeClosed(1, 8).boxed().toList());
            assertThat(proof.laps()).contains(proof.worstLap());
            assertThat(proof.worst()).isGreaterThanOrEqualTo(fault.size() * 0.5);
        });
    }
}
