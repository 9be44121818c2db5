package setwright.core.explanation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.explanation.Reason.Kind;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Drive;
import setwright.core.judgement.Finding;
import setwright.core.judgement.LapsNeeded;
import setwright.core.judgement.Verdict;

/** Explanations of invented stints whose answer is known. */
final class ExplainerTest {
    private static final double CLEAR_STEP = Math.toRadians(1.8);

    private static Diagnosis diagnose(Drive drive) {
        return Diagnostician.diagnose(drive.stint(), Drive.sheet());
    }

    private static Reason reason(List<Reason> reasons, Kind kind) {
        return reasons.stream()
                .filter(reason -> reason.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSlideIsExplainedByItsLapsCornersAndInput() {
        Diagnosis diagnosis = diagnose(new Drive(11).rearSteps(CLEAR_STEP, corner -> corner <= 4));
        Finding finding = diagnosis.grounds().considered().get(0);
        Explanation explanation = Explainer.explain(diagnosis, finding);

        assertThat(explanation.reasons())
                .extracting(Reason::kind)
                .contains(Kind.LAPS, Kind.CORNERS, Kind.TRIGGER, Kind.CERTAINTY);
        Reason laps = reason(explanation.reasons(), Kind.LAPS);
        assertThat(laps.laps()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(laps.sentence()).contains("8 of 8 laps", "Clearest: lap");
        assertThat(laps.proof()).hasValueSatisfying(proof -> {
            assertThat(proof.corner()).isBetween(1, 4);
            assertThat(proof.lap()).isBetween(1, 8);
        });
        assertThat(reason(explanation.reasons(), Kind.CORNERS).corners()).containsExactly(1, 2, 3, 4);
        assertThat(reason(explanation.reasons(), Kind.TRIGGER).sentence())
                .contains("as the brake comes off", "the brake falls by");
    }

    @Test
    void whatElseItCouldBeIsWeighedAgainstTheFinding() {
        Diagnosis diagnosis = diagnose(new Drive(12).rearSteps(CLEAR_STEP, corner -> corner <= 4));
        Finding finding = diagnosis.grounds().considered().get(0);
        List<Alternative> others = Explainer.explain(diagnosis, finding).alternatives();

        assertThat(others).extracting(Alternative::what).contains("chance", "the driver, not the car");
        assertThat(others).allSatisfy(other -> assertThat(other.why()).isNotBlank());
        double chance = others.stream()
                .filter(other -> other.what().equals("chance"))
                .findFirst()
                .orElseThrow()
                .probability()
                .orElseThrow();
        assertThat(chance).isEqualTo(1.0 - finding.probability());
        assertThat(others)
                .extracting(other -> other.probability().orElse(0.0))
                .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    }

    @Test
    void aLevelIsExplainedByTheItemThatMakesIt() {
        CarSheet middle = Sheets.adjustable();
        middle = middle.with(middle.setup().stream()
                .map(item -> new SetupChange(item.name(), item.value(), item.middle()))
                .toList());
        var bar = middle.item("front_bar").orElseThrow();
        CarSheet stiff = middle.with(List.of(new SetupChange("front_bar", bar.value(), bar.max())));
        Diagnosis diagnosis = Diagnostician.diagnose(
                new Drive(31).pushes(Math.toRadians(2.5), corner -> true).stint(), stiff);
        Finding finding = diagnosis.findings().get(0);

        Reason setup = reason(Explainer.explain(diagnosis, finding).reasons(), Kind.SETUP);
        assertThat(setup.sentence()).startsWith("The front bar stands at").contains("of understeer");
        assertThat(setup.figures()).singleElement().satisfies(figure -> {
            assertThat(figure.name()).isEqualTo("front bar");
            assertThat(figure.value()).isPositive();
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothingToChangeSaysWhatWasLookedAtAndTheMostThatWasSeen(long seed) {
        Diagnosis diagnosis = diagnose(new Drive(seed));
        List<Reason> reasons = VerdictExplainer.explain(diagnosis);

        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOTHING_TO_CHANGE);
        assertThat(reasons)
                .extracting(Reason::kind)
                .containsExactly(Kind.LOOKED_AT, Kind.MOST_SEEN, Kind.WHY_NOT, Kind.TO_SETTLE);
        assertThat(reasons.get(0).sentence()).contains("8 laps through 8 corners");
        assertThat(reasons.get(2).figures().get(0).value())
                .isLessThan(reasons.get(2).figures().get(1).value());
    }

    @Test
    void oneCornerAloneIsSaidToBeNoReason() {
        Diagnosis diagnosis = diagnose(new Drive(21).rearSteps(CLEAR_STEP, corner -> corner == 3));
        assertThat(reason(VerdictExplainer.explain(diagnosis), Kind.WHY_NOT).sentence())
                .contains("says nothing of the car");
        assertThat(reason(VerdictExplainer.explain(diagnosis), Kind.TO_SETTLE).sentence())
                .contains("in other corners too", "baseline");
    }

    @Test
    void twoLapsAreToldHowManyMoreAreNeeded() {
        Diagnosis diagnosis = diagnose(new Drive(51).laps(2));
        Reason settle = reason(VerdictExplainer.explain(diagnosis), Kind.TO_SETTLE);
        assertThat(settle.sentence()).isEqualTo("3 laps more at the least; 6 more would be good.");
    }

    @Test
    void aFindingExplainsItself() {
        Diagnosis diagnosis = diagnose(new Drive(31).pushes(Math.toRadians(2.5), corner -> true));
        assertThat(diagnosis.findings()).isNotEmpty();
        assertThat(VerdictExplainer.explain(diagnosis)).isEmpty();
    }

    /** A level's doubt is in what a healthy car shows, the same on every lap. */
    @Test
    void noNumberOfLapsSettlesALevel() {
        Diagnosis diagnosis = diagnose(new Drive(2));
        Finding level = diagnosis.grounds().level().orElseThrow();
        assertThat(LapsNeeded.toSettle(diagnosis, level)).isEmpty();
        assertThat(reason(VerdictExplainer.explain(diagnosis), Kind.TO_SETTLE).sentence())
                .startsWith("More laps alone will not settle it");
    }
}
