package setwright.core.judgement;

import java.util.List;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;

/**
 * The whole answer for one stint, with the evidence it rests on.
 *
 * @param stint          laps on the circuit
 * @param trace          balance at every sample
 * @param passes         the evidence table
 * @param repeatability  of the driving
 * @param faults         of the driving
 * @param findings       most costly first
 * @param verdict        what to do next
 * @param reason         why that verdict, one or two plain sentences with their figures
 * @param grounds        what it rests on besides the passes
 */
public record Diagnosis(
        Stint stint,
        HandlingTrace trace,
        List<CornerPass> passes,
        Repeatability repeatability,
        List<DrivingFault> faults,
        List<Finding> findings,
        Verdict verdict,
        String reason,
        Grounds grounds) {
    public Diagnosis {
        passes = List.copyOf(passes);
        faults = List.copyOf(faults);
        findings = List.copyOf(findings);
    }

    /** Makes one of which the grounds are not kept. */
    public Diagnosis(
            Stint stint,
            HandlingTrace trace,
            List<CornerPass> passes,
            Repeatability repeatability,
            List<DrivingFault> faults,
            List<Finding> findings,
            Verdict verdict,
            String reason) {
        this(stint, trace, passes, repeatability, faults, findings, verdict, reason, Grounds.NONE);
    }

    /** Returns it with its grounds. */
    Diagnosis on(Grounds found) {
        return new Diagnosis(stint, trace, passes, repeatability, faults, findings, verdict, reason, found);
    }
}
