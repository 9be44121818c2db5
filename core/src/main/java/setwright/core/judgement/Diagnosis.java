package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.slip.AxleEvidence;

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
 * @param axles          how hard each axle works, where it was looked at
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
        Grounds grounds,
        Optional<AxleEvidence> axles) {
    public Diagnosis {
        passes = List.copyOf(passes);
        faults = List.copyOf(faults);
        findings = List.copyOf(findings);
    }

    /** Makes one of which neither the grounds are kept nor the axles were looked at. */
    public Diagnosis(
            Stint stint,
            HandlingTrace trace,
            List<CornerPass> passes,
            Repeatability repeatability,
            List<DrivingFault> faults,
            List<Finding> findings,
            Verdict verdict,
            String reason) {
        this(stint, trace, passes, repeatability, faults, findings, verdict, reason, Grounds.NONE, Optional.empty());
    }

    /**
     * Returns what shows in one corner alone, lap after lap, and of which nobody can tell whether it is the car's, the driver's or the
     * place's, the surest first; empty against a baseline, which tells.
     */
    public List<Finding> inOneCorner() {
        if (grounds.baseline().isPresent() || !repeatability.repeatable()) {
            return List.of();
        }
        double least = Certainty.ALONE * Certainty.OF_THE_CAR_IN_ONE_CORNER;
        return grounds.considered().stream()
                .filter(found -> !found.lapWide() && found.corners().size() == 1 && found.cause() == Finding.Cause.CAR)
                .filter(found ->
                        found.probability() >= least && findings.stream().noneMatch(found::isSamePattern))
                .toList();
    }

    /** Returns it with its grounds. */
    Diagnosis on(Grounds found) {
        return new Diagnosis(stint, trace, passes, repeatability, faults, findings, verdict, reason, found, axles);
    }

    /** Returns the same diagnosis with what was found of the axles. */
    public Diagnosis with(AxleEvidence found) {
        return new Diagnosis(
                stint, trace, passes, repeatability, faults, findings, verdict, reason, grounds, Optional.of(found));
    }
}
