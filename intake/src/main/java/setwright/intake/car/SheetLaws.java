package setwright.intake.car;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupPlace;
import setwright.intake.problem.InputProblem;

/** What no car can be, though each value alone is possible. */
final class SheetLaws {
    private static final double MM = 1.0e-3;
    private static final double RADPS_TO_RPM = 30.0 / Math.PI;
    /** A floor steeper than this is no racing car's; common practice is below two degrees. */
    private static final double STEEPEST_FLOOR = Math.tan(Math.toRadians(5.0));
    /** Yaw inertia over m a b; cars lie from 0.6 to 1.3 (common practice), a dumb-bell at the axles has 1. */
    private static final double LEAST_YAW_INDEX = 0.2;

    private static final double MOST_YAW_INDEX = 2.5;
    /** Two figures that mean the same may differ by rounding, not by more. */
    private static final double SAME = 0.005;
    /** Rated power and the curve's come from different runs. */
    private static final double SAME_POWER = 0.1;

    private final SheetKeys keys;
    private final CarSheet sheet;

    SheetLaws(SheetKeys keys, CarSheet sheet) {
        this.keys = keys;
        this.sheet = sheet;
    }

    /**
     * Checks all laws.
     *
     * @throws InputProblem for the first that is broken
     */
    void check() {
        centreOfMass();
        for (SetupPlace end : List.of(SetupPlace.FRONT, SetupPlace.REAR)) {
            axle(end);
            dampers(end);
            bar(end);
        }
        floor();
        yawInertia();
        engine();
        gears();
        sameFigure("fuel", sheet.fuelStartKg(), "fuel_start_kg");
    }

    private void centreOfMass() {
        double highest = 0.5 * Math.min(sheet.trackFrontM(), sheet.trackRearM());
        String key = "centre_of_mass_height_m";
        if (sheet.centreOfMassHeightM() > highest) {
            throw keys.problem(key, keys.line(key))
                    .value(SheetKeys.shown(sheet.centreOfMassHeightM()))
                    .expected("at most half the narrower track, which is " + shown(highest, 3) + " m")
                    .advice("A car beyond that rolls over below 1 g.")
                    .problem();
        }
        double wheels = sheet.detail().front().unsprungMassKg().orElse(0.0)
                + sheet.detail().rear().unsprungMassKg().orElse(0.0);
        double lowest = wheels / sheet.massKg() * sheet.tyreRadiusM();
        if (sheet.centreOfMassHeightM() <= lowest) {
            throw keys.problem(key, keys.line(key))
                    .value(SheetKeys.shown(sheet.centreOfMassHeightM()))
                    .expected("above " + shown(lowest, 3)
                            + " m, where unsprung masses at wheel height alone would put it")
                    .advice("Check unsprung_mass_front_kg, unsprung_mass_rear_kg and tyre_radius_m.")
                    .problem();
        }
    }

    private void axle(SetupPlace end) {
        boolean front = end == SetupPlace.FRONT;
        CarDetail.Axle axle = front ? sheet.detail().front() : sheet.detail().rear();
        String rollCentre = "roll_centre_height_" + end.words() + "_m";
        double height = sheet.centreOfMassHeightM();
        if (axle.rollCentreHeightM().orElse(-height) >= height) {
            throw keys.problem(rollCentre, keys.line(rollCentre))
                    .value(SheetKeys.shown(axle.rollCentreHeightM().orElseThrow()))
                    .expected("a roll centre below the centre of mass, which is at " + SheetKeys.shown(height) + " m")
                    .advice("Give it in m above the ground.")
                    .problem();
        }
        String unsprung = "unsprung_mass_" + end.words() + "_kg";
        double onAxle = sheet.massKg() * (front ? sheet.frontWeightShare() : 1.0 - sheet.frontWeightShare());
        if (axle.unsprungMassKg().orElse(0.0) >= onAxle) {
            throw keys.problem(unsprung, keys.line(unsprung))
                    .value(SheetKeys.shown(axle.unsprungMassKg().orElseThrow()))
                    .expected("less than the whole mass on that axle, which is " + shown(onAxle, 0) + " kg")
                    .advice("Give the wheels, brakes and their share of the links, both sides together.")
                    .problem();
        }
        OptionalDouble floor = value(SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, end));
        if (floor.orElse(0.0) >= height) {
            throw item(SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, end))
                    .expected("a floor below the centre of mass, which is at " + shown(height / MM, 0) + " mm")
                    .advice("Check the unit.")
                    .problem();
        }
    }

    private void dampers(SetupPlace end) {
        for (String way : List.of("bump", "rebound")) {
            String simple = end.words() + "_" + way;
            for (String fine : List.of(simple + "_low", simple + "_high")) {
                if (sheet.item(simple).isPresent() && sheet.item(fine).isPresent()) {
                    throw setup().problem(fine, setup().line(fine))
                            .expected("either " + simple + ", or " + simple + "_low and " + simple + "_high")
                            .found("both")
                            .advice("Give the adjusters that the damper has.")
                            .problem();
                }
            }
        }
    }

    private void bar(SetupPlace end) {
        Optional<CarSheet.BarRate> rate = end == SetupPlace.FRONT ? sheet.barFront() : sheet.barRear();
        Optional<SetupItem> item =
                sheet.item(SetupCatalogue.of(SetupFamily.BAR, end).name());
        if (rate.isEmpty() || item.isEmpty()) {
            return;
        }
        double base = rate.get().baseNPerM();
        double perPosition = rate.get().perPositionNPerM();
        double atMin = base + perPosition * item.get().min();
        double atMax = base + perPosition * item.get().max();
        if (Math.min(atMin, atMax) < 0.0) {
            String key = "bar_wheel_rate_" + end.words() + "_N_per_mm";
            throw keys.problem(key, keys.line(key))
                    .value(SheetKeys.shown(perPosition * MM))
                    .expected("a rate that is nowhere below 0 over the bar's range; at position "
                            + SheetKeys.shown(
                                    atMin < atMax
                                            ? item.get().min()
                                            : item.get().max()) + " it is "
                            + shown(Math.min(atMin, atMax) * MM, 1) + " N/mm")
                    .advice("Count base from position 0.")
                    .problem();
        }
    }

    private void floor() {
        SetupItemKind rear = SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, SetupPlace.REAR);
        OptionalDouble front = value(SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, SetupPlace.FRONT));
        OptionalDouble back = value(rear);
        if (front.isEmpty() || back.isEmpty()) {
            return;
        }
        double most = STEEPEST_FLOOR * sheet.wheelbaseM();
        if (Math.abs(back.getAsDouble() - front.getAsDouble()) > most) {
            double least = Math.max(front.getAsDouble() - most, MM);
            throw item(rear)
                    .expected("a floor that slopes by at most 5 deg, so from " + shown(least / MM, 0) + " to "
                            + shown((front.getAsDouble() + most) / MM, 0) + " mm with this front ride height")
                    .advice("Check the units of both ride heights.")
                    .problem();
        }
    }

    private void yawInertia() {
        String key = "yaw_inertia_kg_m2";
        OptionalDouble inertia = sheet.detail().body().yawInertiaKgM2();
        double unit = sheet.massKg() * sheet.frontAxleToCentreM() * sheet.rearAxleToCentreM();
        double index = inertia.orElse(unit) / unit;
        if (!(index >= LEAST_YAW_INDEX && index <= MOST_YAW_INDEX)) {
            throw keys.problem(key, keys.line(key))
                    .value(SheetKeys.shown(inertia.orElseThrow()))
                    .expected("from " + shown(LEAST_YAW_INDEX * unit, 0) + " to " + shown(MOST_YAW_INDEX * unit, 0)
                            + " kg m² for a car of this mass and wheelbase")
                    .advice("Leave it out when it is not known.")
                    .problem();
        }
    }

    private void engine() {
        CarDetail.Engine engine = sheet.detail().engine();
        double limit = sheet.revLimitRadPerS().orElse(Double.POSITIVE_INFINITY);
        if (engine.idleRadPerS().orElse(0.0) >= limit) {
            throw keys.problem("idle_rpm", keys.line("idle_rpm"))
                    .value(shown(engine.idleRadPerS().orElseThrow() * RADPS_TO_RPM, 0))
                    .expected("less than rev_limit_rpm, which is " + shown(limit * RADPS_TO_RPM, 0))
                    .advice("Swap them.")
                    .problem();
        }
        OptionalDouble peak = engine.torque().stream()
                .mapToDouble(point -> point.radPerS() * point.torqueNm())
                .max();
        if (peak.isPresent() && engine.powerW().isPresent()) {
            double share = peak.getAsDouble() / engine.powerW().getAsDouble();
            if (Math.abs(share - 1.0) > SAME_POWER) {
                throw keys.problem("engine_power_kW", keys.line("engine_power_kW"))
                        .value(SheetKeys.shown(engine.powerW().getAsDouble() / 1.0e3))
                        .expected("the greatest power of engine_torque_curve within 10 %, which is "
                                + shown(peak.getAsDouble() / 1.0e3, 0) + " kW")
                        .advice("Leave engine_power_kW out, or correct the curve.")
                        .problem();
            }
        }
    }

    private void gears() {
        double before = Double.POSITIVE_INFINITY;
        for (int gear = 1; gear <= SetupCatalogue.MOST_GEARS; gear++) {
            String name = "gear_" + gear;
            if (sheet.item(name).isEmpty()) {
                continue;
            }
            SetupItem item = sheet.item(name).orElseThrow();
            if (!(item.value() < before)) {
                throw setup().problem(name, setup().line(name))
                        .value(SheetKeys.shown(item.value()))
                        .expected("ratios that fall from first gear on: less than " + SheetKeys.shown(before) + " here")
                        .advice("Give the gears in the order first to last.")
                        .problem();
            }
            boolean given = keys.node("gear_ratios").isPresent();
            if (gear > sheet.gearRatios().size()) {
                throw setup().problem(name, setup().line(name))
                        .expected(given ? "a gear of gear_ratios" : "every gear below it too")
                        .found("one of " + sheet.gearRatios().size())
                        .advice("Give all gears.")
                        .problem();
            }
            sameFigure(name, sheet.gearRatios().get(gear - 1), "gear_ratios");
            before = item.value();
        }
    }

    private void sameFigure(String name, double known, String key) {
        SetupItemKind kind = SetupCatalogue.find(name).orElseThrow();
        OptionalDouble value = value(kind);
        if (value.isPresent() && Math.abs(value.getAsDouble() - known) > SAME * Math.max(known, 1.0)) {
            throw item(kind)
                    .expected("the same as in " + key + ", which is " + SheetKeys.shown(known))
                    .advice("Correct one of the two.")
                    .problem();
        }
    }

    private OptionalDouble value(SetupItemKind kind) {
        return SetupCatalogue.valueSi(sheet, kind);
    }

    private InputProblem.Builder item(SetupItemKind kind) {
        SetupItem item = sheet.item(kind.name()).orElseThrow();
        return setup().problem(kind.name(), setup().line(kind.name())).value(SheetKeys.shown(item.value()));
    }

    private SheetKeys setup() {
        return keys.inside("setup", keys.group("setup").orElseThrow());
    }

    private static String shown(double value, int decimals) {
        return String.format(java.util.Locale.ROOT, "%." + decimals + "f", value);
    }
}
