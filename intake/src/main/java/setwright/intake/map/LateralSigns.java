package setwright.intake.map;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;

/**
 * Left and right of steering, yaw rate and lateral acceleration.
 *
 * <p>Position tells left from right. Without it the front wheels do: in a left turn the right one is faster. Without both, only
 * the signs against each other can be told; the majority of the columns is then taken as left positive. If that is wrong the
 * circuit comes out mirrored and nothing else changes.
 */
final class LateralSigns {
    private LateralSigns() {}

    static Map<Quantity, Integer> tell(Search search, LateralSearch lateral, Map<Quantity, Integer> chosen) {
        Map<Quantity, Integer> signs = new EnumMap<>(Quantity.class);
        if (search.courseRate.isPresent()) {
            chosen.forEach((role, column) ->
                    signs.put(role, lateral.toCourse(column, role).orElseThrow().slope() < 0.0 ? -1 : 1));
            return signs;
        }
        Quantity anchor = anchorOf(chosen);
        int anchorColumn = Search.at(chosen, anchor);
        int sum = 0;
        for (Map.Entry<Quantity, Integer> choice : chosen.entrySet()) {
            int sign = choice.getKey() == anchor
                            || lateral.relation(anchorColumn, anchor, choice.getValue(), choice.getKey())
                                            .slope()
                                    >= 0.0
                    ? 1
                    : -1;
            signs.put(choice.getKey(), sign);
            sum += sign;
        }
        Optional<Relation> wheels = wheelDifference(search)
                .map(difference ->
                        Relation.between(difference, lateral.asYawRate(anchorColumn, anchor), Signals.STEP_S));
        boolean wheelsTell = wheels.isPresent() && Math.abs(wheels.get().correlation()) > 0.7;
        int turn = wheelsTell ? (wheels.get().slope() < 0.0 ? -1 : 1) : sum < 0 ? -1 : 1;
        signs.replaceAll((role, sign) -> turn * sign);
        if (wheelsTell) {
            search.remark(
                    "There is no position: left and right are told by the wheel speeds (right minus left correlates %.2f with"
                            + " the rate of turn).",
                    Math.abs(wheels.get().correlation()));
        } else {
            search.remark(
                    "There is no position: left cannot be told from right, only that the columns agree with each other."
                            + " If the map of the circuit comes out mirrored, turn the signs of %s; nothing else changes.",
                    String.join(
                            ", ", chosen.values().stream().map(search::header).toList()));
        }
        return signs;
    }

    private static Quantity anchorOf(Map<Quantity, Integer> chosen) {
        return chosen.containsKey(Quantity.YAW_RATE)
                ? Quantity.YAW_RATE
                : chosen.containsKey(Quantity.LATERAL_ACCELERATION)
                        ? Quantity.LATERAL_ACCELERATION
                        : Quantity.STEERING_WHEEL_ANGLE;
    }

    /** Right minus left wheel speed of an axle, m/s; the front one first, because it is rarely locked together. */
    private static Optional<double[]> wheelDifference(Search search) {
        for (String axle : List.of("FRONT", "REAR")) {
            List<Candidate> left = search.named(Quantity.valueOf("WHEEL_SPEED_" + axle + "_LEFT"));
            List<Candidate> right = search.named(Quantity.valueOf("WHEEL_SPEED_" + axle + "_RIGHT"));
            if (!left.isEmpty() && !right.isEmpty()) {
                double[] l = search.signals.column(left.get(0).column());
                double[] r = search.signals.column(right.get(0).column());
                double[] share = Signals.combine(l, r, (a, b) -> 2.0 * (b - a) / (a + b));
                return Optional.of(Signals.combine(share, search.speedMps, (s, v) -> v > 6.0 ? s * v : Double.NaN));
            }
        }
        return Optional.empty();
    }
}
