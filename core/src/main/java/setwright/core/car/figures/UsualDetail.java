package setwright.core.car.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;

/**
 * The details of a sheet with usual values where it is silent. Dampers and the engine's power differ too much between cars
 * of a kind to be assumed: they stay as given.
 *
 * @param detail   as given, completed
 * @param assumed  what was completed
 */
public record UsualDetail(CarDetail detail, List<Assumption> assumed) {
    /** Standard atmosphere at sea level, as people write it, kg/m³. */
    private static final double STANDARD_DENSITY = 1.225;
    /** From crank to wheels; common practice 0.88 to 0.95. */
    private static final double USUAL_EFFICIENCY = 0.92;

    /**
     * Middling values of common practice for a kind of racing car, with a spread of a fifth to a third.
     *
     * @param unsprungFront  share of the car's mass
     * @param unsprungRear   share of the car's mass
     */
    private record Kind(
            double rollCentreFrontM,
            double rollCentreRearM,
            double unsprungFront,
            double unsprungRear,
            double tyreRateNPerMm,
            double dragAreaM2) {

        static Kind of(CarSheet sheet) {
            return switch (sheet.drivenAxle()) {
                case FRONT -> new Kind(0.05, 0.10, 0.080, 0.055, 230, 0.75);
                case ALL -> new Kind(0.05, 0.08, 0.070, 0.070, 240, 0.80);
                case REAR ->
                    sheet.downforce() == Downforce.STRONG
                            ? new Kind(0.02, 0.04, 0.060, 0.070, 220, 1.05)
                            : sheet.downforce() == Downforce.MODERATE
                                    ? new Kind(0.03, 0.06, 0.065, 0.075, 260, 0.95)
                                    : new Kind(0.05, 0.09, 0.070, 0.080, 230, 0.75);
            };
        }
    }

    public UsualDetail {
        assumed = List.copyOf(assumed);
    }

    /** Completes the details of a sheet. */
    public static UsualDetail of(CarSheet sheet) {
        return new Filler().fill(sheet, Kind.of(sheet));
    }

    private static final class Filler {
        private static final double PER_MM_TO_PER_M = 1.0e3;

        private final List<Assumption> assumed = new ArrayList<>();

        private UsualDetail fill(CarSheet sheet, Kind kind) {
            CarDetail given = sheet.detail();
            CarDetail.Axle front = axle(
                    given.front(),
                    "front",
                    kind.rollCentreFrontM(),
                    Math.rint(kind.unsprungFront() * sheet.massKg()),
                    kind.tyreRateNPerMm());
            CarDetail.Axle rear = axle(
                    given.rear(),
                    "rear",
                    kind.rollCentreRearM(),
                    Math.rint(kind.unsprungRear() * sheet.massKg()),
                    kind.tyreRateNPerMm());
            CarDetail.Air air = given.air();
            CarDetail.Engine engine = given.engine();
            if (power(engine).isPresent()) {
                air = new CarDetail.Air(
                        or(air.dragAreaM2(), "drag_area_m2", kind.dragAreaM2(), "m²", 1.0),
                        air.downforceFrontM2(),
                        air.downforceRearM2(),
                        or(air.densityKgPerM3(), "air_density_kg_m3", STANDARD_DENSITY, "kg/m³", 1.0));
                engine = new CarDetail.Engine(
                        engine.powerW(),
                        engine.torque(),
                        engine.brakingTorqueNm(),
                        engine.idleRadPerS(),
                        or(engine.efficiency(), "driveline_efficiency", USUAL_EFFICIENCY, "", 1.0));
            }
            return new UsualDetail(new CarDetail(front, rear, given.body(), air, engine, given.tyre()), assumed);
        }

        private CarDetail.Axle axle(
                CarDetail.Axle given, String end, double rollCentreM, double unsprungKg, double tyreRateNPerMm) {
            return new CarDetail.Axle(
                    or(given.rollCentreHeightM(), "roll_centre_height_" + end + "_m", rollCentreM, "m", 1.0),
                    or(given.unsprungMassKg(), "unsprung_mass_" + end + "_kg", unsprungKg, "kg", 1.0),
                    or(
                            given.tyreSpringRateNPerM(),
                            "tyre_spring_rate_" + end + "_N_per_mm",
                            tyreRateNPerMm,
                            "N/mm",
                            PER_MM_TO_PER_M),
                    given.bumpStopRateNPerM(),
                    given.brakeTorqueNmPerPa(),
                    given.damper());
        }

        private OptionalDouble or(OptionalDouble given, String key, double usual, String unit, double toSi) {
            if (given.isPresent()) {
                return given;
            }
            assumed.add(new Assumption(key, usual, unit));
            return OptionalDouble.of(usual * toSi);
        }
    }

    /** Returns the greatest power at the crank, W: of the curve where there is one, else as given. */
    public static OptionalDouble power(CarDetail.Engine engine) {
        OptionalDouble peak = engine.torque().stream()
                .mapToDouble(point -> point.radPerS() * point.torqueNm())
                .max();
        return peak.isPresent() ? peak : engine.powerW();
    }
}
