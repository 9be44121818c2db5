package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;

final class StorytellerTest {
    private static final Figures FIGURES = Figures.forPage(UnitSystem.METRIC);

    @Test
    void aProblemOfTheDriversOwnMakingIsNotBlamedOnTheCar() {
        Story story = Storyteller.tell(madeByTheDriver(), FIGURES);
        assertThat(story.headline()).startsWith("Coach the driver: entry oversteer in the slower corners comes from");
        assertThat(story.cause().answer()).contains("put down to the driver, not the car");
        assertThat(story.next())
                .anyMatch(step -> step.contains("throttle picked up, then lifted (corner 8)"))
                .last()
                .asString()
                .contains("until that is cured");
    }

    @Test
    void aProblemOfOneCornerIsNoReasonToChangeTheCar() {
        Story story = Storyteller.tell(Example.answer(), FIGURES);
        assertThat(story.pattern().details())
                .singleElement()
                .asString()
                .contains("corners 5 and 9", "no reason to change the car");
    }

    /** The first at length, the others in one paragraph each; what else it could be says why it is not. */
    @Test
    void everyFindingHasItsReasons() {
        Diagnosis diagnosis = Example.answer().diagnosis();
        List<String> why = Storyteller.tell(Example.answer(), FIGURES).why();
        assertThat(diagnosis.findings()).hasSizeGreaterThan(1);
        diagnosis.findings().stream()
                .skip(1)
                .forEach(finding -> assertThat(why)
                        .anyMatch(reason -> reason.startsWith(Figures.capital(FindingWords.name(finding)) + ": ")));
        assertThat(why).anyMatch(reason -> reason.matches("(?s)Perhaps [^:]+: .{10,}"));
    }

    @Test
    void withoutFindingsNothingIsClaimed() {
        Story story = Storyteller.tell(Example.without(Verdict.NOTHING_TO_CHANGE, "balanced"), FIGURES);
        assertThat(story.balance().answer()).startsWith("No fault stands out beyond doubt");
        assertThat(story.pattern().answer()).contains("No problem repeats beyond chance");
        assertThat(story.next().get(0)).startsWith("Leave the car as it is");
    }

    /** It is told, and that it says nothing of the car. */
    @Test
    void aSlideInOneCornerAloneIsSeenButNoProblem() {
        Story story = Storyteller.tell(Example.seenInOneCorner(), FIGURES);
        assertThat(story.balance().answer()).startsWith("No fault stands out beyond doubt");
        assertThat(story.balance().details())
                .anySatisfy(detail -> assertThat(detail.replace(Figures.KEPT_TOGETHER, ' '))
                        .startsWith("In corner 5 alone the rear lets go on entry on 92 % of the laps, by 0.46 deg.")
                        .contains("says nothing of this one"));
        assertThat(story.pattern().answer().replace(Figures.KEPT_TOGETHER, ' '))
                .isEqualTo("No problem repeats round the lap; the rear lets go in corner 5 alone.");
        assertThat(story.next().get(0)).startsWith("Leave the car as it is");
    }

    @Test
    void whatWasTakenOtherwiseThanItsHeaderSaysIsTold() {
        Answer answer = Example.answer();
        String remark = "The header of 'v' says km/h, but the data are in mph.";
        Answer odd = new Answer(answer.diagnosis(), answer.car(), answer.channels(), List.of(remark));
        assertThat(Storyteller.tell(odd, FIGURES).laps().details()).contains(remark);
    }

    @Test
    void weakSignsAreNotCalledNothing() {
        Story story = Storyteller.tell(Example.without(Verdict.NOT_ENOUGH_EVIDENCE, "weak"), FIGURES);
        assertThat(story.cause().answer()).doesNotContain("Nothing stands out");
        assertThat(story.next()).noneMatch(step -> step.contains("What is missing"));
    }

    private static Answer madeByTheDriver() {
        Answer answer = Example.answer();
        Diagnosis d = answer.diagnosis();
        Finding f = d.findings().get(0);
        Finding driver = new Finding(
                f.phase(),
                f.speed(),
                f.balance(),
                f.trigger(),
                f.triggers(),
                Finding.Cause.DRIVER,
                f.corners(),
                f.lapShare(),
                f.lapWide(),
                f.probability(),
                f.sizeRad(),
                f.sizeLowRad(),
                f.sizeHighRad(),
                f.price(),
                f.why());
        Diagnosis coached = new Diagnosis(
                d.stint(),
                d.trace(),
                d.passes(),
                d.repeatability(),
                d.faults(),
                List.of(driver),
                Verdict.COACH_THE_DRIVER,
                "the brake is held too long");
        return new Answer(coached, answer.car(), answer.channels(), answer.remarks());
    }
}
