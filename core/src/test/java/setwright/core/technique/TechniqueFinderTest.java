package setwright.core.technique;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.DrivenAxle;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Drive;
import setwright.core.judgement.DrivingFault;

/** Whole invented stints: what is asked, what is named and what is kept silent. */
final class TechniqueFinderTest {
    private static final double CLEAR_STEP = Math.toRadians(1.8);
    /** Deeper than cars leave ({@link FirstStep#LEFT_BY_CARS}) by far. */
    private static final double TOO_DEEP = 4.0;

    private static Diagnosis diagnose(Drive drive) {
        return Diagnostician.diagnose(drive.stint(), Drive.sheet());
    }

    private static List<TechniqueLever> find(Drive drive) {
        return TechniqueFinder.find(diagnose(drive), DrivenAxle.REAR);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void whoDrivesWellIsToldNothing(long seed) {
        assertThat(find(new Drive(seed))).isEmpty();
    }

    /** The fault itself asks for less brake; that he does the same on every lap makes it weak, and proves nothing of what it does. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void whoTrailsTooDeepIsToldToBrakeLess(long seed) {
        assertThat(find(new Drive(seed).trails(TOO_DEEP))).singleElement().satisfies(lever -> {
            DrivingFault fault = lever.fault().orElseThrow();
            assertThat(fault.byTheBrake()).isTrue();
            assertThat(lever.rank()).isZero();
            assertThat(lever.lever()).isIn(Lever.OVERLAP, Lever.BRAKE_AT_TURN_IN);
            assertThat(lever.move()).as("less").isNegative();
            assertThat(lever.weak()).isTrue();
            assertThat(lever.corners())
                    .extracting(TechniqueLever.AtCorner::corner)
                    .containsExactlyElementsOf(fault.corners());
            assertThat(lever.corners()).allSatisfy(at -> assertThat(at.better()).isLessThan(at.usual()));
            assertThat(lever.firstStep().isPresent())
                    .as("only a habit tells the size of a first step")
                    .isEqualTo(fault.habit());
        });
    }

    @Test
    void twoLapsTellNothing() {
        assertThat(find(new Drive(31).trails(TOO_DEEP).laps(2))).isEmpty();
    }

    /**
     * A rear that steps out whatever the feet do: no lever cures it. Where every null hypothesis is true, the level of Benjamini and
     * Hochberg (Journal of the Royal Statistical Society B 57, 1995) bounds the chance of any false lever in a stint by one in twenty; three
     * or more in twelve stints then come by chance in one of fifty.
     */
    @Test
    void chanceIsHardlyEverCalledALever() {
        List<Diagnosis> stints = LongStream.rangeClosed(41, 52)
                .mapToObj(seed -> diagnose(new Drive(seed).rearSteps(CLEAR_STEP, corner -> corner == 3)))
                .toList();
        assertThat(stints)
                .as("something to ask about")
                .filteredOn(diagnosis -> !diagnosis.inOneCorner().isEmpty())
                .hasSizeGreaterThan(8);
        assertThat(stints)
                .filteredOn(diagnosis -> TechniqueFinder.find(diagnosis, DrivenAxle.REAR).stream()
                        .anyMatch(lever -> !lever.weak()))
                .hasSizeLessThan(3);
    }

    /** Without laps that repeat no lever is held against the balance; a fault of the driving is told all the same. */
    @Test
    void unevenLapsAreAskedAboutFaultsOnly() {
        Diagnosis uneven = diagnose(new Drive(61).pace(0.05).trails(TOO_DEEP));
        assertThat(uneven.repeatability().repeatable()).isFalse();
        assertThat(TechniqueFinder.find(uneven, DrivenAxle.REAR))
                .allSatisfy(lever -> assertThat(lever.fault()).isPresent());
    }
}
