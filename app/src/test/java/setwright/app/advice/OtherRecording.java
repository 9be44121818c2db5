package setwright.app.advice;

import setwright.core.circuit.Stint;
import setwright.core.judgement.Diagnosis;
import setwright.core.recording.Recording;

/** A diagnosis as it stands, of a recording with other channels. */
final class OtherRecording {
    private OtherRecording() {}

    static Diagnosis of(Diagnosis d, Recording recording) {
        Stint stint = d.stint();
        return new Diagnosis(
                new Stint(recording, stint.circuit(), stint.laps(), stint.station(), stint.offset()),
                d.trace(),
                d.passes(),
                d.repeatability(),
                d.faults(),
                d.findings(),
                d.verdict(),
                d.reason(),
                d.grounds(),
                d.axles());
    }
}
