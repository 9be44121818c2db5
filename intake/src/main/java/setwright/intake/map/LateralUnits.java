package setwright.intake.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;

/**
 * Units and directions of steering, yaw rate and lateral acceleration once it is known which is which.
 */
final class LateralUnits {
    /** Sensors tilt with the body and path and heading differ in a slide, but not by this: e^0.4 is one and a half. */
    private static final double SIZE_TOLERANCE = 0.4;
    /** Hand wheel over road wheel, quickest and slowest racks (common practice: 8 to 25), and understeer on top. */
    private static final double MOST_HAND_RATIO = 40.0;

    private static final double TYPICAL_HAND_RATIO = 14.0;
    private static final double MOST_ROAD_RATIO = 3.0;
    private static final double TYPICAL_ROAD_RATIO = 1.15;
    /** With a car sheet the ratio is known; understeer and wheelbase errors remain. */
    private static final double SHEET_TOLERANCE = Math.log(2.5);
    /** Largest yaw rate of a car that is not spinning, rad/s; the same figure in deg/s is a slow corner. */
    private static final double FASTEST_YAW_RADPS = 3.5;

    private static final List<Unit> ANGLES =
            List.of(Units.get(Dimension.ANGLE, "rad"), Units.get(Dimension.ANGLE, "deg"));
    private static final List<Unit> RATES =
            List.of(Units.get(Dimension.ANGULAR_RATE, "rad/s"), Units.get(Dimension.ANGULAR_RATE, "deg/s"));
    private static final List<Unit> ACCELERATIONS =
            List.of(Units.get(Dimension.ACCELERATION, "m/s2"), Units.get(Dimension.ACCELERATION, "g"));

    /** One way to read a column: unit, and what the reading is of. */
    record Reading(Quantity quantity, Unit unit, double expected, double tolerance) {
        /** How far the size is off, as a log ratio. */
        double misfit(double slope) {
            return Math.log(Math.abs(slope) * unit.factor() / expected);
        }
    }

    private LateralUnits() {}

    /** The ways to read a column in a role, each with the slope expected against yaw rate in rad/s. */
    private static List<Reading> readings(Search search, int column, Quantity role) {
        List<Reading> readings = new ArrayList<>();
        switch (role) {
            case YAW_RATE ->
                units(search, column, role, RATES)
                        .forEach(unit -> readings.add(new Reading(role, unit, 1.0, SIZE_TOLERANCE)));
            case LATERAL_ACCELERATION ->
                units(search, column, role, ACCELERATIONS)
                        .forEach(unit -> readings.add(new Reading(role, unit, 1.0, SIZE_TOLERANCE)));
            default -> {
                double wheelbase = search.wheelbaseM();
                Optional<Double> ratio = search.car.map(CarSheet::steeringRatio).filter(known -> !ratioAssumed(search));
                double typical = ratio.orElse(TYPICAL_HAND_RATIO);
                double tolerance = ratio.isPresent() ? SHEET_TOLERANCE : Math.log(MOST_HAND_RATIO / TYPICAL_HAND_RATIO);
                for (Unit unit : units(search, column, role, ANGLES)) {
                    readings.add(new Reading(Quantity.STEERING_WHEEL_ANGLE, unit, typical * wheelbase, tolerance));
                    readings.add(new Reading(
                            Quantity.ROAD_WHEEL_ANGLE,
                            unit,
                            TYPICAL_ROAD_RATIO * wheelbase,
                            Math.log(MOST_ROAD_RATIO / TYPICAL_ROAD_RATIO)));
                }
            }
        }
        return readings;
    }

    /** The usual units, and a rare one where the header names it: by size alone it could pass for another. */
    private static List<Unit> units(Search search, int column, Quantity role, List<Unit> usual) {
        List<Unit> units = new ArrayList<>(usual);
        search.declaredUnit(column, role)
                .filter(unit -> unit.dimension() == usual.get(0).dimension() && !usual.contains(unit))
                .ifPresent(units::add);
        return units;
    }

    private static boolean ratioAssumed(Search search) {
        return search.car
                .map(sheet -> sheet.assumed().stream().anyMatch(line -> line.contains("steering_ratio")))
                .orElse(false);
    }

    /** Tells whether a column's size against the course rate fits a role in any unit. */
    static boolean fits(Search search, int column, Quantity role, double slope) {
        return readings(search, column, role).stream().anyMatch(r -> Math.abs(r.misfit(slope)) <= r.tolerance());
    }

    /** Tells whether two columns' sizes against each other fit their roles in any pair of units. */
    static boolean fits(
            Search search, int firstColumn, Quantity first, int secondColumn, Quantity second, double slope) {
        for (Reading a : readings(search, firstColumn, first)) {
            for (Reading b : readings(search, secondColumn, second)) {
                double relative = slope * a.expected() / a.unit().factor();
                if (Math.abs(b.misfit(relative)) <= a.tolerance() + b.tolerance()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Works out units and signs of the chosen columns and enters them. */
    static void settle(Search search, LateralSearch lateral, Map<Quantity, Integer> chosen) {
        if (chosen.isEmpty()) {
            return;
        }
        Map<Quantity, Reading> readings = search.courseRate.isPresent()
                ? againstCourse(search, lateral, chosen)
                : againstEachOther(search, lateral, chosen);
        Map<Quantity, Integer> signs = LateralSigns.tell(search, lateral, chosen);
        for (Map.Entry<Quantity, Integer> choice : chosen.entrySet()) {
            Quantity role = choice.getKey();
            int column = choice.getValue();
            Reading reading = readings.get(role);
            if (reading == null) {
                continue;
            }
            LateralEvidence evidence = LateralEvidence.of(search, lateral, chosen, readings, role);
            search.declaredUnit(column, reading.quantity())
                    .filter(declared -> !declared.equals(reading.unit()))
                    .ifPresent(declared -> search.remark(
                            "The header of '%s' says %s, but the data are in %s: %s.",
                            search.header(column), declared, reading.unit(), evidence.text()));
            int sign = signs.getOrDefault(role, 1);
            search.accept(reading.quantity(), column, reading.unit(), sign, 0.0, evidence.standing(), evidence.text());
        }
    }

    private static Map<Quantity, Reading> againstCourse(
            Search search, LateralSearch lateral, Map<Quantity, Integer> chosen) {
        Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
        for (Map.Entry<Quantity, Integer> choice : chosen.entrySet()) {
            Quantity role = choice.getKey();
            double slope =
                    lateral.toCourse(choice.getValue(), role).orElseThrow().slope();
            readings(search, choice.getValue(), role).stream()
                    .min(Comparator.comparingDouble(r -> cost(search, choice.getValue(), r, r.misfit(slope))))
                    .ifPresent(reading -> readings.put(role, reading));
        }
        return readings;
    }

    /** Without a path, all pairs of readings must agree, and each must be of a size that happens. */
    private static Map<Quantity, Reading> againstEachOther(
            Search search, LateralSearch lateral, Map<Quantity, Integer> chosen) {
        List<Quantity> roles = new ArrayList<>(chosen.keySet());
        List<Map<Quantity, Reading>> all = new ArrayList<>();
        combine(search, chosen, roles, 0, new EnumMap<>(Quantity.class), all);
        Map<Quantity, Reading> best = Map.of();
        double least = Double.POSITIVE_INFINITY;
        for (Map<Quantity, Reading> readings : all) {
            double cost = 0.0;
            for (int i = 0; i < roles.size(); i++) {
                Quantity role = roles.get(i);
                Reading reading = Search.at(readings, role);
                cost += cost(search, Search.at(chosen, role), reading, 0.0)
                        + sizeCost(search, Search.at(chosen, role), role, reading);
                for (int j = 0; j < i; j++) {
                    Reading other = Search.at(readings, roles.get(j));
                    double slope = lateral.relation(
                                    Search.at(chosen, roles.get(j)), roles.get(j), Search.at(chosen, role), role)
                            .slope();
                    double misfit = reading.misfit(
                            slope * other.expected() / other.unit().factor());
                    double tolerance = reading.tolerance() + other.tolerance();
                    cost += (misfit / tolerance) * (misfit / tolerance);
                }
            }
            if (cost < least) {
                least = cost;
                best = readings;
            }
        }
        return best;
    }

    private static void combine(
            Search search,
            Map<Quantity, Integer> chosen,
            List<Quantity> roles,
            int at,
            Map<Quantity, Reading> partial,
            List<Map<Quantity, Reading>> all) {
        if (at == roles.size()) {
            all.add(new EnumMap<>(partial));
            return;
        }
        Quantity role = roles.get(at);
        for (Reading reading : readings(search, Search.at(chosen, role), role)) {
            partial.put(role, reading);
            combine(search, chosen, roles, at + 1, partial, all);
        }
    }

    /** Misfit in units of the tolerance, squared; what the header says breaks ties. */
    private static double cost(Search search, int column, Reading reading, double misfit) {
        double scaled = misfit / reading.tolerance();
        boolean declaredOtherwise = search.declaredUnit(column, reading.quantity())
                .map(declared -> !declared.equals(reading.unit()))
                .orElse(false);
        boolean namedOtherwise = reading.quantity() == Quantity.ROAD_WHEEL_ANGLE
                && search.wordScore(column, Quantity.ROAD_WHEEL_ANGLE)
                        < search.wordScore(column, Quantity.STEERING_WHEEL_ANGLE);
        boolean namedRoad = reading.quantity() == Quantity.STEERING_WHEEL_ANGLE
                && search.wordScore(column, Quantity.ROAD_WHEEL_ANGLE)
                        > search.wordScore(column, Quantity.STEERING_WHEEL_ANGLE);
        return scaled * scaled + (declaredOtherwise ? 1.0 : 0.0) + (namedOtherwise || namedRoad ? 0.5 : 0.0);
    }

    private static double sizeCost(Search search, int column, Quantity role, Reading reading) {
        double size = Math.max(
                        Math.abs(search.signals.quantile(column, 0.001)),
                        Math.abs(search.signals.quantile(column, 0.999)))
                * reading.unit().factor();
        return switch (role) {
            case YAW_RATE -> size > FASTEST_YAW_RADPS || size < 0.05 ? 4.0 : 0.0;
            case LATERAL_ACCELERATION -> size > 80.0 || size < 1.0 ? 4.0 : 0.0;
            default -> {
                double most = reading.quantity() == Quantity.ROAD_WHEEL_ANGLE ? 1.0 : 20.0;
                double least = reading.quantity() == Quantity.ROAD_WHEEL_ANGLE ? 0.01 : 0.1;
                yield size > most || size < least ? 4.0 : 0.0;
            }
        };
    }
}
