package setwright.core.identification;

import java.util.List;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;

/**
 * Laps with what was made of them.
 *
 * @param stint   laps on the circuit
 * @param trace   of the same stint
 * @param passes  of the same stint
 */
public record TracedStint(Stint stint, HandlingTrace trace, List<CornerPass> passes) {
    public TracedStint {
        passes = List.copyOf(passes);
    }
}
