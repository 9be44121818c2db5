package setwright.app.scoreboard;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.identification.FittedCar;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Finding;
import setwright.core.proposal.DriversAnswer;
import setwright.core.replay.Prediction;
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
 * @param predicted  what the program expects of each change that the truth knows, in its order; empty without a predictor
 * @param failure    where it ended and why; empty when it went through
 */
record StintRun(
        PracticeCase practice,
        Truth.Stint truth,
        Optional<CarSheet> sheet,
        Optional<Intake> intake,
        Optional<Stint> stint,
        Optional<Diagnosis> diagnosis,
        Optional<List<Prediction>> predicted,
        String failure) {

    /** A stage that fails is an answer like any other: the stages before it still count. */
    static StintRun of(PracticeCase practice, Truth.Stint truth) {
        Optional<CarSheet> sheet = Optional.empty();
        Optional<Intake> intake = Optional.empty();
        Optional<Stint> stint = Optional.empty();
        Optional<Diagnosis> diagnosis = Optional.empty();
        Optional<List<Prediction>> predicted = Optional.empty();
        String failure = "";
        try {
            sheet = Optional.of(CarSheetReader.read(practice.carSheet(truth)));
            intake = Optional.of(RecordingReader.read(practice.recording(truth), Optional.empty(), sheet));
            stint = Optional.of(StintBuilder.build(intake.get().recording()));
            diagnosis = Optional.of(Diagnostician.diagnose(stint.get(), sheet.get()));
            predicted = predict(
                    diagnosis.get(),
                    sheet.get(),
                    practice.truth().triedChanges().stream()
                            .map(change -> List.of(change.turned()))
                            .toList());
        } catch (RuntimeException e) {
            String stage = sheet.isEmpty()
                    ? "car sheet"
                    : intake.isEmpty()
                            ? "reading"
                            : stint.isEmpty() ? "laps" : diagnosis.isEmpty() ? "judging" : "predicting";
            failure = stage + ": " + e;
        }
        return new StintRun(practice, truth, sheet, intake, stint, diagnosis, predicted, failure);
    }

    /** Asks for the effect of each candidate, changes that are turned together; empty where the truth tried none. */
    private static Optional<List<Prediction>> predict(
            Diagnosis diagnosis, CarSheet sheet, List<List<SetupChange>> candidates) {
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        FittedCar car = Identifier.identify(
                List.of(new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes())), sheet);
        return Optional.of(DriversAnswer.foresee(diagnosis, sheet, car.belief(), candidates));
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
