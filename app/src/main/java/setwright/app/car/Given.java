package setwright.app.car;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;

/**
 * A value that the sheet gives and that not every sheet has.
 *
 * @param key    of the sheet
 * @param value  in the unit of the key
 * @param unit   as shown; empty for a pure number
 */
public record Given(String key, double value, String unit) {
    private static final double RADPS_TO_RPM = 30.0 / Math.PI;
    private static final double PER_M_TO_PER_MM = 1.0e-3;
    private static final double PA_TO_BAR = 1.0e-5;

    /** Returns what a sheet gives beyond what every car is described with. */
    public static List<Given> of(CarSheet sheet) {
        Collector found = new Collector();
        CarDetail detail = sheet.detail();
        found.add("rev_limit_rpm", sheet.revLimitRadPerS(), RADPS_TO_RPM, "rpm");
        found.add("brake_pressure_max_bar", sheet.brakePressureMaxPa(), PA_TO_BAR, "bar");
        found.bar("bar_wheel_rate_front_N_per_mm", sheet.barFront());
        found.bar("bar_wheel_rate_rear_N_per_mm", sheet.barRear());
        found.axle("front", detail.front());
        found.axle("rear", detail.rear());
        found.add("anti_dive_percent", detail.body().antiDiveShare(), 100.0, "%");
        found.add("anti_squat_percent", detail.body().antiSquatShare(), 100.0, "%");
        found.add("yaw_inertia_kg_m2", detail.body().yawInertiaKgM2(), 1.0, "kg m2");
        found.add("drag_area_m2", detail.air().dragAreaM2(), 1.0, "m2");
        found.add("lift_area_front_m2", detail.air().downforceFrontM2(), 1.0, "m2");
        found.add("lift_area_rear_m2", detail.air().downforceRearM2(), 1.0, "m2");
        found.add("air_density_kg_m3", detail.air().densityKgPerM3(), 1.0, "kg/m3");
        found.add("engine_power_kW", detail.engine().powerW(), 1.0e-3, "kW");
        detail.engine()
                .torque()
                .forEach(point -> found.values.add(new Given(
                        "engine_torque_curve at " + Math.round(point.radPerS() * RADPS_TO_RPM) + " rpm",
                        point.torqueNm(),
                        "Nm")));
        found.add("engine_braking_torque_Nm", detail.engine().brakingTorqueNm(), 1.0, "Nm");
        found.add("idle_rpm", detail.engine().idleRadPerS(), RADPS_TO_RPM, "rpm");
        found.add("driveline_efficiency", detail.engine().efficiency(), 1.0, "");
        found.add("tyre_peak_slip_angle_deg", detail.tyre().peakSlipAngleRad(), Math.toDegrees(1.0), "deg");
        found.add("tyre_grip", detail.tyre().grip(), 1.0, "");
        return List.copyOf(found.values);
    }

    private static final class Collector {
        private final List<Given> values = new ArrayList<>();

        private void add(String key, OptionalDouble value, double factor, String unit) {
            value.ifPresent(v -> values.add(new Given(key, v * factor, unit)));
        }

        private void bar(String key, java.util.Optional<CarSheet.BarRate> rate) {
            rate.ifPresent(r -> {
                values.add(new Given(key + ".base", r.baseNPerM() * PER_M_TO_PER_MM, "N/mm"));
                values.add(new Given(key + ".per_position", r.perPositionNPerM() * PER_M_TO_PER_MM, "N/mm"));
            });
        }

        private void axle(String end, CarDetail.Axle axle) {
            add("roll_centre_height_" + end + "_m", axle.rollCentreHeightM(), 1.0, "m");
            add("unsprung_mass_" + end + "_kg", axle.unsprungMassKg(), 1.0, "kg");
            add("tyre_spring_rate_" + end + "_N_per_mm", axle.tyreSpringRateNPerM(), PER_M_TO_PER_MM, "N/mm");
            add("bump_stop_rate_" + end + "_N_per_mm", axle.bumpStopRateNPerM(), PER_M_TO_PER_MM, "N/mm");
            add("brake_torque_" + end + "_Nm_per_bar", axle.brakeTorqueNmPerPa(), 1.0 / PA_TO_BAR, "Nm/bar");
            axle.damper().ifPresent(damper -> {
                String key = "damper_rate_" + end + "_Ns_per_m.";
                values.add(new Given(key + "bump_low", damper.bumpLow(), "N s/m"));
                values.add(new Given(key + "bump_high", damper.bumpHigh(), "N s/m"));
                values.add(new Given(key + "rebound_low", damper.reboundLow(), "N s/m"));
                values.add(new Given(key + "rebound_high", damper.reboundHigh(), "N s/m"));
                values.add(new Given(key + "knee_m_per_s", damper.kneeMps(), "m/s"));
                add(key + "per_click", damper.perClick(), 1.0, "");
            });
        }
    }
}
