package setwright.app.scoreboard;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.SetupChange;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/**
 * What is really going on in a case, as its truth file says it; fields it does not use are left out. Lists and maps may be
 * null where a file has none, hence the methods that return empty ones.
 */
record Truth(
        String archetype,
        double lapLengthM,
        double lapTimeS,
        double balancedCarLapTimeS,
        List<Stint> stints,
        Driver driver,
        Label label,
        Map<String, Map<String, Object>> changedFromBalanced,
        Map<String, Map<String, Double>> balanceDeltaVsBalancedDeg,
        Map<String, Map<String, Double>> recordedBalanceDeltaVsBalancedDeg,
        List<Corner> corners,
        Recording recording,
        BackToBack backToBack,
        double lapTimeNoiseS,
        List<Change> changes) {

    record Stint(String file, String setup, List<Lap> laps) {}

    record Lap(int lap, double timeS, String kind) {}

    record Driver(double lapTimeSdPct, boolean consistentEnough) {}

    record Label(
            String fault,
            String phase,
            String speedClass,
            String sign,
            String trigger,
            String kind,
            List<String> acceptPhases,
            List<String> acceptSpeedClasses,
            boolean weak,
            double measuredStrengthDeg,
            List<Integer> affectedCorners) {

        /** Tells whether there is a problem that the answer must name. */
        boolean hasProblem() {
            return !weak && (sign.equals("oversteer") || sign.equals("understeer"));
        }
    }

    record Corner(
            int corner,
            String direction,
            double sApexM,
            double apexSpeedKmh,
            String speedClass,
            Map<String, List<Double>> phaseBoundsM,
            Map<String, Double> frontMinusRearSlipDeg,
            Map<String, Double> deltaVsBalancedDeg) {}

    record Recording(List<Column> columns, double steeringZeroOffsetDeg, double yawRateBiasDegS) {}

    record Column(String header, String quantity, String unit, String positive) {

        /** Returns +1 where the column counts to the left or has no direction, -1 where it counts to the right. */
        int sign() {
            return "right".equals(positive) ? -1 : 1;
        }
    }

    /** Two setups driven after each other; {@code changed} gives the value of each item by the name of the setup. */
    record BackToBack(
            String verdict,
            Map<String, Map<String, Object>> changed,

            @JsonProperty("balance_delta_B_minus_A_deg")
            Map<String, Map<String, Double>> balanceDeltaSecondMinusFirstDeg) {}

    /**
     * What one change of setup really did, against the car as recorded.
     *
     * @param item             name on the sheet
     * @param from             value before, in the sheet's unit
     * @param to               value after
     * @param lapTimeDeltaS    change of the lap time, s
     * @param spins            spins while it was driven; with one, its figures say little
     * @param balanceDeltaDeg  change of balance by speed class and phase, deg, positive for understeer; null where the lap has none
     */
    record Change(
            String item,
            double from,
            double to,
            double lapTimeDeltaS,
            int spins,
            Map<String, Map<String, Double>> balanceDeltaDeg) {

        OptionalDouble balanceDeg(ChangeCell cell) {
            Double value = balanceDeltaDeg
                    .getOrDefault(cell.speed().words(), Map.of())
                    .get(cell.phase().words());
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
        }

        SetupChange turned() {
            return new SetupChange(item, from, to);
        }
    }

    static Truth read(Path file) {
        return JsonMapper.builder()
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .build()
                .readValue(file.toFile(), Truth.class);
    }

    /** Returns the column of a quantity, in the truth's word for it. */
    Optional<Column> column(String quantity) {
        return recording.columns().stream()
                .filter(column -> column.quantity().equals(quantity))
                .findFirst();
    }

    /** Returns the changes whose true effect is known; none where the file has none. */
    List<Change> triedChanges() {
        return changes == null ? List.of() : changes;
    }

    /** Tells whether a stint was driven with every item at the value of the balanced car. */
    boolean isBalanced(Stint stint) {
        return changedFromBalanced().entrySet().stream().allMatch(change -> {
            Map<String, Object> values = backToBack.changed().getOrDefault(change.getKey(), Map.of());
            return same(values.get(stint.setup()), change.getValue().get("balanced"));
        });
    }

    /** The same value, written as 4 or as 4.0. */
    private static boolean same(Object one, Object other) {
        return one instanceof Number a && other instanceof Number b
                ? a.doubleValue() == b.doubleValue()
                : Objects.equals(one, other);
    }

    boolean isBackToBack() {
        return label.kind().equals("back_to_back");
    }
}
