package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Verdict;
import setwright.core.numerics.Robust;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.truth.TrueTrigger;
import setwright.core.technique.FirstStep;
import setwright.core.technique.Lever;
import setwright.core.technique.TechniqueFinder;

/**
 * A balanced car and its driver, with and without the throttle too early. A case of a seed of our own, drawn as the bench draws
 * them.
 */
final class DriversHabitsTest {
    private static final long OWN_SEED = 8_101L;

    @TempDir
    Path folder;

    @Test
    void theThrottleOpenedTooEarlyIsFoundAndProvedAndTheGoodDriverIsNotAccused() throws IOException {
        Driven driven = Driven.of(CaseDraw.draw(OWN_SEED, 7, Optional.of("throttle too early")));

        Diagnosis diagnosis = diagnose(driven, driven.recorded());
        assertHabit(diagnosis, "throttle too early");
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
        assertFirstStep(diagnosis, driven);
        assertNoHabit(diagnose(driven, driven.without()));
    }

    private static void assertNoHabit(Diagnosis diagnosis) {
        assertThat(diagnosis.faults()).noneMatch(DrivingFault::habit);
    }

    private static void assertHabit(Diagnosis diagnosis, String kind) {
        DrivingFault fault = diagnosis.faults().stream()
                .filter(found -> found.kind().startsWith(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " was not found among "
                        + diagnosis.faults().stream().map(DrivingFault::kind).toList()));
        assertThat(fault.habit()).isTrue();
        assertThat(fault.proofs()).hasSameSizeAs(fault.corners());
        assertThat(fault.proofs()).allSatisfy(proof -> assertThat(proof.laps()).contains(proof.worstLap()));
    }

    /** He does the same on every lap: how much later he is to pick up, the habit itself tells. True is what he was made to be early by. */
    private static void assertFirstStep(Diagnosis diagnosis, Driven driven) {
        double slowestMps = Robust.median(diagnosis.passes().stream()
                .mapToDouble(CornerPass::lowestSpeedMps)
                .toArray());
        double earlyS = driven.last().style().pickUpEarlyM() / slowestMps;
        FirstStep step = TechniqueFinder.find(diagnosis, driven.sheet().drivenAxle()).stream()
                .filter(lever -> lever.lever() == Lever.PICK_UP)
                .flatMap(lever -> lever.firstStep().stream())
                .findFirst()
                .orElseThrow();
        assertThat(step.aim()).isBetween(0.5 * earlyS, 2.0 * earlyS);
    }

    private Diagnosis diagnose(Driven driven, DrivenStint stint) throws IOException {
        BenchCase drawn = driven.last();
        Path recording = folder.resolve(drawn.csv().gzip() ? "stint1.csv.gz" : "stint1.csv");
        RecordingWriter.write(recording, Logger.log(stint.history(), driven.sheet(), drawn.logger()), drawn.csv());
        Path sheet = Files.writeString(
                folder.resolve("car.yaml"),
                SheetCopy.with(drawn.car().name(), drawn.car().sheetText(), List.of()));
        CaseAnswer answer = CaseAnswer.of(new CaseFiles(recording, sheet), Optional.empty(), TrueTrigger.NONE);
        return answer.diagnosis().orElseThrow(() -> new AssertionError(answer.failure()));
    }
}
