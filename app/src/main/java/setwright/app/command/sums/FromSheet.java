package setwright.app.command.sums;

import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.worked.Unit;
import setwright.intake.problem.InputProblem;

/**
 * Where on a car sheet a value stands.
 *
 * @param key     on the sheet
 * @param reader  reads it, in SI units
 */
record FromSheet(String key, Reader reader) {
    static final FromSheet MASS =
            new FromSheet("mass_with_driver_kg", (car, file) -> OptionalDouble.of(car.massKg() + car.fuelStartKg()));
    static final FromSheet FRONT_WEIGHT =
            new FromSheet("front_weight_share", (car, file) -> OptionalDouble.of(car.frontWeightShare()));
    static final FromSheet WHEELBASE = new FromSheet("wheelbase_m", (car, file) -> OptionalDouble.of(car.wheelbaseM()));
    static final FromSheet HEIGHT =
            new FromSheet("centre_of_mass_height_m", (car, file) -> OptionalDouble.of(car.centreOfMassHeightM()));
    static final FromSheet TYRE_RADIUS =
            new FromSheet("tyre_radius_m", (car, file) -> OptionalDouble.of(car.tyreRadiusM()));
    static final FromSheet REV_LIMIT = new FromSheet("rev_limit_rpm", (car, file) -> car.revLimitRadPerS());
    static final FromSheet FRONT_TRACK =
            new FromSheet("track_front_m", (car, file) -> OptionalDouble.of(car.trackFrontM()));
    static final FromSheet REAR_TRACK =
            new FromSheet("track_rear_m", (car, file) -> OptionalDouble.of(car.trackRearM()));
    static final FromSheet FRONT_MOTION_RATIO =
            new FromSheet("motion_ratio_front", (car, file) -> OptionalDouble.of(car.motionRatioFront()));
    static final FromSheet REAR_MOTION_RATIO =
            new FromSheet("motion_ratio_rear", (car, file) -> OptionalDouble.of(car.motionRatioRear()));
    static final FromSheet FRONT_WHEEL_MASS = new FromSheet(
            "mass_with_driver_kg",
            (car, file) -> OptionalDouble.of((car.massKg() + car.fuelStartKg()) * car.frontWeightShare() / 2.0));
    static final FromSheet REAR_WHEEL_MASS = new FromSheet(
            "mass_with_driver_kg",
            (car, file) ->
                    OptionalDouble.of((car.massKg() + car.fuelStartKg()) * (1.0 - car.frontWeightShare()) / 2.0));
    static final FromSheet FRONT_BAR =
            new FromSheet("bar_wheel_rate_front_N_per_mm", (car, file) -> bar(car, "front_bar", car.barFront()));
    static final FromSheet REAR_BAR =
            new FromSheet("bar_wheel_rate_rear_N_per_mm", (car, file) -> bar(car, "rear_bar", car.barRear()));
    static final FromSheet FUEL = new FromSheet("fuel_start_kg", (car, file) -> OptionalDouble.of(car.fuelStartKg()));
    static final FromSheet FRONT_SPRING =
            new FromSheet("setup.front_spring", (car, file) -> item(car, file, "front_spring", Unit.N_PER_MM));
    static final FromSheet REAR_SPRING =
            new FromSheet("setup.rear_spring", (car, file) -> item(car, file, "rear_spring", Unit.N_PER_MM));
    static final FromSheet FRONT_PRESSURE =
            new FromSheet("setup.front_tyre_pressure", (car, file) -> item(car, file, "front_tyre_pressure", Unit.BAR));
    static final FromSheet REAR_PRESSURE =
            new FromSheet("setup.rear_tyre_pressure", (car, file) -> item(car, file, "rear_tyre_pressure", Unit.BAR));
    static final FromSheet BIAS =
            new FromSheet("setup.brake_bias_front", (car, file) -> item(car, file, "brake_bias_front", Unit.PERCENT));
    static final FromSheet FINAL_DRIVE =
            new FromSheet("setup.final_drive", (car, file) -> item(car, file, "final_drive", Unit.RATIO));

    /** Reads a value off a sheet whose file is called so. */
    interface Reader {
        OptionalDouble si(CarSheet car, String file);
    }

    /**
     * Returns the value in SI units; empty where the sheet does not say it.
     *
     * @param file  what messages call the sheet
     */
    OptionalDouble si(CarSheet car, String file) {
        return reader.si(car, file);
    }

    private static OptionalDouble bar(CarSheet car, String name, Optional<CarSheet.BarRate> rate) {
        return toDouble(rate.flatMap(
                bar -> car.item(name).map(item -> bar.baseNPerM() + bar.perPositionNPerM() * item.value())));
    }

    private static OptionalDouble item(CarSheet car, String file, String name, Unit unit) {
        return toDouble(car.item(name).map(item -> unit.si(inUnit(item, file, unit))));
    }

    private static double inUnit(SetupItem item, String file, Unit unit) {
        boolean plainRatio = unit == Unit.RATIO && item.unit().equals("ratio");
        if (!item.unit().equals(unit.symbol()) && !plainRatio) {
            throw InputProblem.in(file)
                    .column("setup." + item.name() + ".unit")
                    .value(item.unit())
                    .expected("the unit " + unit.symbol())
                    .advice("Convert the item, or give the value as an option.")
                    .problem();
        }
        return item.value();
    }

    private static OptionalDouble toDouble(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
