package setwright.core.slip;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;

/**
 * What a stint says of its axles.
 *
 * @param trace   at every sample
 * @param front   grip curve of the front axle
 * @param rear    of the rear axle
 * @param wheels  that locked or spun
 * @param hands   gestures and the axle that they answer, in the order of the passes
 */
public record AxleEvidence(
        AxleTrace trace, GripCurve front, GripCurve rear, WheelEvidence wheels, List<HandsReading> hands) {
    public AxleEvidence {
        hands = List.copyOf(hands);
    }

    /**
     * Finds it, but for the hands.
     *
     * @param stint  laps on the circuit
     * @param trace  of the same stint
     * @param sheet  of the car
     */
    public static AxleEvidence of(Stint stint, HandlingTrace trace, CarSheet sheet) {
        SlipSteps steps = SlipEstimator.steps(stint, trace, sheet);
        AxleTrace axles = AxleTraces.of(stint, trace, steps);
        List<GripCurve> curves = GripCurves.of(stint, trace, sheet, steps);
        return new AxleEvidence(
                axles, curves.get(0), curves.get(1), WheelEventFinder.find(stint, trace, sheet), List.of());
    }

    /** Returns the gestures that the laps bear out, in the same order. */
    public List<HandsReading> borneOut() {
        return hands.stream().filter(HandsReading::borneOut).toList();
    }

    /**
     * Returns the same with what the hands did about it.
     *
     * @param passes  of the same stint
     */
    public AxleEvidence with(Stint stint, List<CornerPass> passes) {
        return new AxleEvidence(trace, front, rear, wheels, HandsReader.read(stint, passes, trace));
    }
}
