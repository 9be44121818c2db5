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
 */
public record Diagnosis(
        Stint stint,
        HandlingTrace trace,
        List<CornerPass> passes,
        Repeatability repeatability,
        List<DrivingFault> faults,
        List<Finding> findings,
        Verdict verdict,
        String reason) {
    public Diagnosis {
        passes = List.copyOf(passes);
        faults = List.copyOf(faults);
        findings = List.copyOf(findings);
    }
}
