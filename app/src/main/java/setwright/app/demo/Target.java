package setwright.app.demo;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;

/**
 * What a change is meant to cure: the balance in one phase of some corners, measured lap by lap.
 *
 * @param phase    of the corners
 * @param corners  their numbers
 * @param balance  which axle gives up
 */
public record Target(Phase phase, List<Integer> corners, BalanceSign balance) {
    public Target {
        corners = List.copyOf(corners);
    }

    static Target of(Finding finding) {
        return new Target(finding.phase(), finding.corners(), finding.balance());
    }

    /** Returns +1 where more understeer helps, -1 where more oversteer does. */
    public double wanted() {
        return balance == BalanceSign.OVERSTEER ? 1.0 : -1.0;
    }

    /** Returns the excess balance of each judged lap, deg, understeer positive: the mean over the corners. */
    public List<Double> perLapDeg(DemoStint stint) {
        Map<Integer, List<Double>> laps = new TreeMap<>();
        for (CornerPass pass : stint.answer().diagnosis().passes()) {
            OptionalDouble excess = excess(pass);
            if (corners.contains(pass.corner()) && excess.isPresent()) {
                laps.computeIfAbsent(pass.lap(), lap -> new java.util.ArrayList<>())
                        .add(Math.toDegrees(excess.getAsDouble()));
            }
        }
        return laps.values().stream()
                .map(values -> values.stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .toList();
    }

    private OptionalDouble excess(CornerPass pass) {
        return pass.phase(phase)
                .map(found -> OptionalDouble.of(found.excessRad()))
                .filter(value -> Double.isFinite(value.getAsDouble()))
                .orElse(OptionalDouble.empty());
    }
}
