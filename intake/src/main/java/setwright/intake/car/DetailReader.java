package setwright.intake.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.intake.yaml.YamlNode;

/** Reads the keys that only a well informed user can give; none of them is needed. */
final class DetailReader {
    static final List<String> KEYS = List.of(
            "roll_centre_height_front_m",
            "roll_centre_height_rear_m",
            "unsprung_mass_front_kg",
            "unsprung_mass_rear_kg",
            "tyre_spring_rate_front_N_per_mm",
            "tyre_spring_rate_rear_N_per_mm",
            "bump_stop_rate_front_N_per_mm",
            "bump_stop_rate_rear_N_per_mm",
            "brake_torque_front_Nm_per_bar",
            "brake_torque_rear_Nm_per_bar",
            "damper_rate_front_Ns_per_m",
            "damper_rate_rear_Ns_per_m",
            "anti_dive_percent",
            "anti_squat_percent",
            "yaw_inertia_kg_m2",
            "drag_area_m2",
            "lift_area_front_m2",
            "lift_area_rear_m2",
            "air_density_kg_m3",
            "engine_power_kW",
            "engine_torque_curve",
            "engine_braking_torque_Nm",
            "idle_rpm",
            "driveline_efficiency",
            "tyre_peak_slip_angle_deg",
            "tyre_grip");
    private static final double RPM_TO_RADPS = Math.PI / 30.0;
    private static final double PER_MM_TO_PER_M = 1.0e3;
    private static final double PER_BAR_TO_PER_PA = 1.0e-5;
    private static final double HIGHEST_RPM = 25000.0;

    private final SheetKeys keys;

    DetailReader(SheetKeys keys) {
        this.keys = keys;
    }

    CarDetail read() {
        return new CarDetail(
                axle("front"),
                axle("rear"),
                new CarDetail.Body(
                        number("anti_dive_percent", 0, 100, "%", 0.01),
                        number("anti_squat_percent", 0, 100, "%", 0.01),
                        number("yaw_inertia_kg_m2", 20, 10000, "kg m²", 1)),
                new CarDetail.Air(
                        number("drag_area_m2", 0.1, 5, "m²", 1),
                        number("lift_area_front_m2", -1, 8, "m², positive pressing down", 1),
                        number("lift_area_rear_m2", -1, 8, "m², positive pressing down", 1),
                        number("air_density_kg_m3", 0.7, 1.5, "kg/m³", 1)),
                new CarDetail.Engine(
                        number("engine_power_kW", 3, 1500, "kW", 1.0e3),
                        torqueCurve(),
                        number("engine_braking_torque_Nm", 0, 500, "Nm", 1),
                        number("idle_rpm", 300, 6000, "rpm", RPM_TO_RADPS),
                        number("driveline_efficiency", 0.5, 1, "as a share", 1)),
                new CarDetail.Tyre(
                        number("tyre_peak_slip_angle_deg", 1, 25, "deg", Math.PI / 180.0),
                        number("tyre_grip", 0.3, 3, "(force over load)", 1)));
    }

    private CarDetail.Axle axle(String end) {
        return new CarDetail.Axle(
                number("roll_centre_height_" + end + "_m", -0.3, 0.6, "m", 1),
                number("unsprung_mass_" + end + "_kg", 1, 500, "kg for both wheels", 1),
                number("tyre_spring_rate_" + end + "_N_per_mm", 30, 1500, "N/mm", PER_MM_TO_PER_M),
                number("bump_stop_rate_" + end + "_N_per_mm", 1, 5000, "N/mm", PER_MM_TO_PER_M),
                number("brake_torque_" + end + "_Nm_per_bar", 0.5, 500, "Nm/bar for both wheels", PER_BAR_TO_PER_PA),
                damper("damper_rate_" + end + "_Ns_per_m"));
    }

    private OptionalDouble number(String key, double least, double most, String unit, double factor) {
        OptionalDouble value = keys.number(key, least, most, unit);
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private Optional<CarDetail.Damper> damper(String key) {
        return keys.group(key).map(group -> {
            SheetKeys damper = keys.inside(key, group);
            damper.allowOnly(
                    List.of("bump_low", "bump_high", "rebound_low", "rebound_high", "knee_m_per_s", "per_click"));
            return new CarDetail.Damper(
                    slope(damper, "bump_low"),
                    slope(damper, "bump_high"),
                    slope(damper, "rebound_low"),
                    slope(damper, "rebound_high"),
                    damper.required("knee_m_per_s", 0.005, 0.5, "m/s at the damper"),
                    damper.number("per_click", 0, 0.5, "as a share of the slope"));
        });
    }

    private static double slope(SheetKeys damper, String key) {
        return damper.required(key, 50, 100_000, "N s/m at the damper");
    }

    private List<CarDetail.TorquePoint> torqueCurve() {
        String key = "engine_torque_curve";
        List<CarDetail.TorquePoint> points = new ArrayList<>();
        Optional<YamlNode.Sequence> list = keys.list(key);
        if (list.isEmpty()) {
            return points;
        }
        double before = 0.0;
        for (YamlNode item : list.get().items()) {
            if (!(item instanceof YamlNode.Sequence pair && pair.items().size() == 2)) {
                throw keys.problem(key, item.line())
                        .expected("pairs of engine speed in rpm and torque in Nm, such as [[3000, 180], [5000, 210]]")
                        .found(item.kind())
                        .advice("Put each point in its own brackets.")
                        .problem();
            }
            double rpm = keys.number(key, pair.items().get(0));
            double torque = keys.number(key, pair.items().get(1));
            if (!(rpm > before && rpm <= HIGHEST_RPM)) {
                throw keys.problem(key, item.line())
                        .value(SheetKeys.shown(rpm))
                        .expected("engine speeds that rise from point to point: above " + SheetKeys.shown(before)
                                + " and at most " + SheetKeys.shown(HIGHEST_RPM) + " rpm here")
                        .advice("Give each point as [rpm, Nm], slowest first.")
                        .problem();
            }
            if (!(torque > 0.0 && torque <= 3000.0)) {
                throw keys.problem(key, item.line())
                        .value(SheetKeys.shown(torque))
                        .expected("a full-throttle torque above 0 and at most 3000 Nm")
                        .advice("Give each point as [rpm, Nm].")
                        .problem();
            }
            before = rpm;
            points.add(new CarDetail.TorquePoint(rpm * RPM_TO_RADPS, torque));
        }
        if (points.size() < 2) {
            throw keys.problem(key, list.get().line())
                    .expected("at least two points")
                    .found(points.isEmpty() ? "none" : "one")
                    .advice("Give engine_power_kW instead if only that is known.")
                    .problem();
        }
        return points;
    }
}
