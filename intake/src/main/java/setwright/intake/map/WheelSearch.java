package setwright.intake.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds the four wheel speeds and whether they are speeds or rates of rotation. */
final class WheelSearch {
    private static final List<Quantity> WHEELS = List.of(
            Quantity.WHEEL_SPEED_FRONT_LEFT,
            Quantity.WHEEL_SPEED_FRONT_RIGHT,
            Quantity.WHEEL_SPEED_REAR_LEFT,
            Quantity.WHEEL_SPEED_REAR_RIGHT);
    /** Rolling radii of karts' to large road cars' tyres, m (common practice). */
    private static final double TYPICAL_RADIUS_M = 0.31;

    private static final double RADIUS_TOLERANCE = Math.log(1.45);
    /** Slip, tyre growth and calibration together, as a log ratio. */
    private static final double SPEED_TOLERANCE = 0.15;

    private WheelSearch() {}

    static void run(Search search) {
        for (Quantity wheel : WHEELS) {
            search.named(wheel).stream().findFirst().ifPresent(candidate -> find(search, wheel, candidate));
        }
    }

    private static void find(Search search, Quantity wheel, Candidate candidate) {
        int column = candidate.column();
        Relation relation = Relation.between(search.speedMps, search.signals.column(column), Signals.STEP_S);
        if (relation.correlation() < 0.8) {
            search.remark(
                    "Column '%s' is named like a wheel speed but does not follow the speed (correlation %.2f); it is not used.",
                    search.header(column), relation.correlation());
            search.claimed.add(column);
            return;
        }
        double radius = search.car.map(CarSheet::tyreRadiusM).orElse(TYPICAL_RADIUS_M);
        Optional<Unit> declared = search.unit(column, wheel);
        Unit best = declared.orElse(Units.get(Dimension.SPEED, "m/s"));
        double least =
                declared.map(unit -> misfit(relation.slope(), unit, radius)).orElse(Double.POSITIVE_INFINITY);
        // The header is believed unless it is off by more than slip and tyre growth explain.
        if (least > 1.0) {
            List<Unit> units = new ArrayList<>(Units.of(Dimension.SPEED));
            units.addAll(Units.of(Dimension.ANGULAR_RATE));
            for (Unit unit : units) {
                double misfit = misfit(relation.slope(), unit, radius);
                if (misfit < least) {
                    best = unit;
                    least = misfit;
                }
            }
        }
        boolean rotates = best.dimension() == Dimension.ANGULAR_RATE;
        double size = relation.slope() * best.factor();
        String physics = rotates
                ? Search.text(
                        "in %s it turns once per %.3f m of rolling radius (correlation with speed %.3f)",
                        best, 1.0 / size, relation.correlation())
                : Search.text(
                        "in %s it is %.3f times the speed (correlation %.3f)", best, size, relation.correlation());
        search.accept(wheel, column, best, 1, 0.0, least <= 1.0 ? Standing.CONFIRMED : Standing.SILENT, physics);
    }

    private static double misfit(double slope, Unit unit, double radius) {
        return unit.dimension() == Dimension.SPEED
                ? Math.abs(Math.log(slope * unit.factor())) / SPEED_TOLERANCE
                : Math.abs(Math.log(slope * unit.factor() * radius)) / RADIUS_TOLERANCE;
    }
}
