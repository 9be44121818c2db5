package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.evidence.Answer;
import setwright.app.scoreboard.Home;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Verdict;
import setwright.core.standing.SetupStanding.Yard;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** What to do next where there is not enough evidence: more laps are asked for only where they help. Recordings of another simulation. */
final class NextStepTest {
    private static final Pattern RANGE =
            Pattern.compile("\\{value: ([-\\d.]+), unit: ([^,]+), min: ([-\\d.]+), max: ([-\\d.]+),");

    @TempDir
    private Path folder;

    private static String withoutRanges(String sheet) {
        return sheet.replaceAll(",? *(min|max): *[-\\d.]+", "");
    }

    private Answer answer(String name, UnaryOperator<String> sheet) throws IOException {
        Path practice = Home.cases().resolve(name);
        Path file = folder.resolve("car.yaml");
        Files.writeString(file, sheet.apply(Files.readString(practice.resolve("car.yaml"))));
        CarSheet car = CarSheetReader.read(file);
        Stint stint = StintBuilder.build(
                RecordingReader.read(practice.resolve("stint1.csv.gz"), Optional.empty(), Optional.of(car))
                        .recording());
        return new Answer(Diagnostician.diagnose(stint, car), car, List.of(), List.of());
    }

    private Story story(String name, UnaryOperator<String> sheet) throws IOException {
        Answer answer = answer(name, sheet);
        assertThat(answer.diagnosis().verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        return Storyteller.tell(answer, Figures.forPage(UnitSystem.METRIC));
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-01", "practice-05", "practice-06", "practice-07"})
    void lapsAloneAreNoReasonToChangeACar(String name) throws IOException {
        assertThat(answer(name, NextStepTest::withoutRanges).diagnosis().verdict())
                .isIn(Verdict.NOTHING_TO_CHANGE, Verdict.NOT_ENOUGH_EVIDENCE);
    }

    /** Ranges that are what a part can do: the items stand anywhere in them, one at an end is no reason for anything. */
    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void rangesThatAreNotLaidOutAboutTheUsualAreNoReasonToChangeACar(long seed) throws IOException {
        Random random = new Random(seed);
        Answer answer = answer(
                "practice-06",
                sheet -> RANGE.matcher(sheet).replaceAll(range -> {
                    double value = Double.parseDouble(range.group(1));
                    double width = Double.parseDouble(range.group(4)) - Double.parseDouble(range.group(3));
                    double below = random.nextDouble() * Math.min(width, Math.max(value, 0.1 * width));
                    return String.format(
                            Locale.ROOT,
                            "{value: %s, unit: %s, min: %.6f, max: %.6f,",
                            range.group(1),
                            range.group(2),
                            value - below,
                            value - below + width);
                }));
        assertThat(answer.diagnosis().grounds().standing().yard()).isEqualTo(Yard.SCATTERED);
        assertThat(answer.diagnosis().verdict()).isIn(Verdict.NOTHING_TO_CHANGE, Verdict.NOT_ENOUGH_EVIDENCE);
    }

    @Test
    void aWrongSteeringRatioIsCorrectedAndTheSameLapsAreAskedAgain() throws IOException {
        List<String> next = story(
                        "practice-01", text -> text.replaceFirst("steering_ratio: [\\d.]+", "steering_ratio: 16.5"))
                .next();
        assertThat(next.get(0)).startsWith("Correct the steering ratio");
        assertThat(next.get(1)).contains("same laps");
        assertThat(next).noneMatch(step -> step.contains("Record"));
    }

    @Test
    void whatMoreLapsDoNotSettleIsSettledOtherwise() throws IOException {
        Story story = story("practice-04", NextStepTest::withoutRanges);
        assertThat(story.next()).noneMatch(step -> step.startsWith("Record"));
        assertThat(story.next().get(0))
                .startsWith("More laps like these would not make it count")
                .contains("ranges on the car sheet", "as a baseline");
        assertThat(story.next().get(1)).contains("leave the car as it is");
    }
}
