package setwright.app.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What {@code car check --json} prints, version 1: docs/car-check.schema.json. Fields are only ever added to a version.
 * Numbers that are not known are null.
 */
record CarCheckJson(
        int version,
        Car car,
        @JsonProperty("also_given") List<Keyed> alsoGiven,
        List<Item> setup,
        List<Label> labels,
        Derived figures,
        List<String> remarks,
        List<String> untold,
        List<String> assumed,
        @JsonProperty("usual_values") List<Keyed> usualValues) {

    record Car(
            String description,
            @JsonProperty("driven_axle") String drivenAxle,
            String downforce,
            @JsonProperty("mass_with_driver_kg") OptionalDouble massKg,
            @JsonProperty("fuel_start_kg") OptionalDouble fuelKg,
            @JsonProperty("front_weight_share") OptionalDouble frontShare,
            @JsonProperty("wheelbase_m") OptionalDouble wheelbaseM,
            @JsonProperty("track_front_m") OptionalDouble trackFrontM,
            @JsonProperty("track_rear_m") OptionalDouble trackRearM,
            @JsonProperty("centre_of_mass_height_m") OptionalDouble heightM,
            @JsonProperty("steering_ratio") OptionalDouble steeringRatio,
            @JsonProperty("tyre_radius_m") OptionalDouble tyreRadiusM,
            @JsonProperty("motion_ratio_front") OptionalDouble motionRatioFront,
            @JsonProperty("motion_ratio_rear") OptionalDouble motionRatioRear) {}

    record Item(
            String item,
            double value,
            String unit,
            double from,
            double to,
            double step,
            String axle,
            boolean modelled,
            @JsonProperty("acts_on") String actsOn) {}

    record Label(
            String item,
            String value,
            List<String> choices,
            String axle,
            boolean modelled,
            @JsonProperty("acts_on") String actsOn) {}

    record Derived(
            @JsonProperty("mass_kg") OptionalDouble massKg,
            Axle front,
            Axle rear,
            @JsonProperty("roll_gradient_deg_per_g") OptionalDouble rollGradient,
            @JsonProperty("front_roll_stiffness_share") OptionalDouble stiffnessShare,
            @JsonProperty("front_lateral_transfer_share_1g") OptionalDouble transferShare,
            @JsonProperty("understeer_gradient_deg_per_g") OptionalDouble understeerGradient,
            @JsonProperty("rake_deg") OptionalDouble rakeDeg,
            Brakes brakes,
            List<Gear> gears,
            @JsonProperty("top_speed_by_limiter_km_h") OptionalDouble byLimiter,
            @JsonProperty("top_speed_by_power_km_h") OptionalDouble byPower) {}

    record Axle(
            @JsonProperty("load_n") OptionalDouble loadN,
            @JsonProperty("wheel_load_n") OptionalDouble wheelLoadN,
            @JsonProperty("sprung_mass_kg") OptionalDouble sprungMassKg,
            @JsonProperty("wheel_rate_n_per_mm") OptionalDouble wheelRate,
            @JsonProperty("ride_rate_n_per_mm") OptionalDouble rideRate,
            @JsonProperty("ride_frequency_hz") OptionalDouble frequencyHz,
            @JsonProperty("damping_ratio_bump_low") OptionalDouble bumpLow,
            @JsonProperty("damping_ratio_bump_high") OptionalDouble bumpHigh,
            @JsonProperty("damping_ratio_rebound_low") OptionalDouble reboundLow,
            @JsonProperty("damping_ratio_rebound_high") OptionalDouble reboundHigh,

            @JsonProperty("roll_stiffness_springs_nm_per_deg")
            OptionalDouble rollSprings,

            @JsonProperty("roll_stiffness_bar_nm_per_deg") OptionalDouble rollBar,
            @JsonProperty("lateral_transfer_1g_n") OptionalDouble transferN,
            @JsonProperty("lateral_transfer_1g_elastic_n") OptionalDouble elasticN,
            @JsonProperty("lateral_transfer_1g_geometric_n") OptionalDouble geometricN,
            @JsonProperty("lateral_transfer_1g_unsprung_n") OptionalDouble unsprungN,
            @JsonProperty("inner_wheel_lifts_g") OptionalDouble liftG,
            @JsonProperty("load_braking_1g_n") OptionalDouble brakingLoadN) {}

    record Brakes(
            @JsonProperty("transfer_1g_n") OptionalDouble transferN,
            @JsonProperty("ideal_front_share_1g") OptionalDouble idealShare,
            @JsonProperty("front_share") OptionalDouble biasShare,
            @JsonProperty("both_lock_together_g") OptionalDouble togetherG,
            @JsonProperty("locks_first_1g") String locksFirst) {}

    record Gear(
            int gear,
            double ratio,
            @JsonProperty("at_limiter_km_h") OptionalDouble atLimit,
            @JsonProperty("after_shift_rpm") OptionalDouble afterShift) {}

    record Keyed(String key, OptionalDouble value, String unit) {}
}
