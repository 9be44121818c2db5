package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.evidence.Answer;
import setwright.app.scoreboard.Home;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Verdict;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** What to do next where there is not enough evidence: more laps are asked for only where they help. Recordings of another simulation. */
final class NextStepTest {
    @TempDir
    private Path folder;

    private Story story(String name, UnaryOperator<String> sheet) throws IOException {
        Path practice = Home.cases().resolve(name);
        Path file = folder.resolve("car.yaml");
        Files.writeString(file, sheet.apply(Files.readString(practice.resolve("car.yaml"))));
        CarSheet car = CarSheetReader.read(file);
        Stint stint = StintBuilder.build(
                RecordingReader.read(practice.resolve("stint1.csv.gz"), Optional.empty(), Optional.of(car))
                        .recording());
        Diagnosis diagnosis = Diagnostician.diagnose(stint, car);
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.NOT_ENOUGH_EVIDENCE);
        return Storyteller.tell(new Answer(diagnosis, car, List.of(), List.of()), Figures.forPage(UnitSystem.METRIC));
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
        Story story = story("practice-04", text -> text.replaceAll(",? *(min|max): *[-\\d.]+", ""));
        assertThat(story.next()).noneMatch(step -> step.startsWith("Record"));
        assertThat(story.next().get(0))
                .startsWith("More laps like these would not make it count")
                .contains("ranges on the car sheet", "as a baseline");
        assertThat(story.next().get(1)).contains("leave the car as it is");
    }
}
