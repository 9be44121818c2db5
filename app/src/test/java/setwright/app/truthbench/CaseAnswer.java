package setwright.app.truthbench;

import java.util.List;
import java.util.Optional;
import setwright.app.scoreboard.TruthTerms;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Finding;
import setwright.core.simulation.truth.TrueTrigger;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * What the program says to a recording and a car sheet.
 *
 * @param sheet         as read
 * @param intake        as read
 * @param diagnosis     the answer
 * @param triggerRight  whether the first finding names the trigger of the case's mechanism
 * @param failure       where it ended and why; empty when it went through
 */
record CaseAnswer(
        Optional<CarSheet> sheet,
        Optional<Intake> intake,
        Optional<Diagnosis> diagnosis,
        boolean triggerRight,
        String failure) {

    /** Reads and judges the files as for a user; a stage that fails is an answer like any other. */
    static CaseAnswer of(CaseFiles files, Optional<CaseFiles> good, TrueTrigger trigger) {
        Optional<CarSheet> sheet = Optional.empty();
        Optional<Intake> intake = Optional.empty();
        Optional<Stint> stint = Optional.empty();
        Optional<Diagnosis> diagnosis = Optional.empty();
        String failure = "";
        try {
            sheet = Optional.of(CarSheetReader.read(files.sheet()));
            intake = Optional.of(RecordingReader.read(files.recording(), Optional.empty(), sheet));
            stint = Optional.of(StintBuilder.build(intake.get().recording()));
            Circuit circuit = stint.get().circuit();
            Optional<Baseline> baseline = good.map(day -> baseline(day, circuit));
            diagnosis = Optional.of(Diagnostician.diagnose(stint.get(), sheet.get(), baseline));
        } catch (RuntimeException e) {
            String stage =
                    sheet.isEmpty() ? "car sheet" : intake.isEmpty() ? "reading" : stint.isEmpty() ? "laps" : "judging";
            failure = stage + ": " + e.getMessage();
        }
        boolean right = diagnosis
                .flatMap(answer -> answer.findings().stream()
                        .findFirst()
                        .flatMap(first -> TruthTerms.trigger(trigger.word(), answer.passes())
                                .map(rule -> rule.test(first))))
                .orElse(false);
        return new CaseAnswer(sheet, intake, diagnosis, right, failure);
    }

    private static Baseline baseline(CaseFiles files, Circuit circuit) {
        CarSheet sheet = CarSheetReader.read(files.sheet());
        Intake intake = RecordingReader.read(files.recording(), Optional.empty(), Optional.of(sheet));
        return Baseline.of("baseline", StintBuilder.build(intake.recording(), circuit), sheet);
    }

    Optional<Finding> top() {
        return findings().stream().findFirst();
    }

    List<Finding> findings() {
        return diagnosis.map(Diagnosis::findings).orElse(List.of());
    }

    /** Returns the name of the stage that failed; empty when none did. */
    String failedStage() {
        return failure.isEmpty() ? "" : failure.substring(0, failure.indexOf(':'));
    }
}
