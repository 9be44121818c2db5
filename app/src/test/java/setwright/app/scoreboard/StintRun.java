package setwright.app.scoreboard;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Finding;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * One recording sent through the whole chain, as far as it came.
 *
 * @param practice   the case
 * @param truth      which of its stints
 * @param sheet      of the car
 * @param intake     the recording as read
 * @param stint      laps on the circuit
 * @param diagnosis  the answer
 * @param failure    where it ended and why; empty when it went through
 */
record StintRun(
        PracticeCase practice,
        Truth.Stint truth,
        Optional<CarSheet> sheet,
        Optional<Intake> intake,
        Optional<Stint> stint,
        Optional<Diagnosis> diagnosis,
        String failure) {

    /** A stage that fails is an answer like any other: the stages before it still count. */
    static StintRun of(PracticeCase practice, Truth.Stint truth) {
        Optional<CarSheet> sheet = Optional.empty();
        Optional<Intake> intake = Optional.empty();
        Optional<Stint> stint = Optional.empty();
        Optional<Diagnosis> diagnosis = Optional.empty();
        String failure = "";
        try {
            sheet = Optional.of(CarSheetReader.read(practice.carSheet(truth)));
            intake = Optional.of(RecordingReader.read(practice.recording(truth), Optional.empty(), sheet));
            stint = Optional.of(StintBuilder.build(intake.get().recording()));
            diagnosis = Optional.of(Diagnostician.diagnose(stint.get(), sheet.get()));
        } catch (RuntimeException e) {
            String stage =
                    sheet.isEmpty() ? "car sheet" : intake.isEmpty() ? "reading" : stint.isEmpty() ? "laps" : "judging";
            failure = stage + ": " + e;
        }
        return new StintRun(practice, truth, sheet, intake, stint, diagnosis, failure);
    }

    /** Returns the name of the case, with the stint where there are several. */
    String name() {
        List<Truth.Stint> stints = practice.truth().stints();
        return stints.size() == 1 ? practice.name() : practice.name() + " stint " + (stints.indexOf(truth) + 1);
    }

    /** Returns the finding that comes first. */
    Optional<Finding> top() {
        return diagnosis.flatMap(answer -> answer.findings().stream().findFirst());
    }

    /** Returns truth and circuit laid over each other; nothing matches when no circuit was found. */
    CornerMatch cornerMatch() {
        return CornerMatch.of(
                practice.truth(), stint.map(found -> found.circuit().corners()).orElse(List.of()));
    }
}
