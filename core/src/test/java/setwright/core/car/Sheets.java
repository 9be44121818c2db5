package setwright.core.car;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Car sheets for tests: only what the balance reads differs from car to car. */
public final class Sheets {
    private Sheets() {}

    /** Returns a car without wings or setup items. */
    public static CarSheet plain(
            DrivenAxle driven, double massKg, double frontShare, double wheelbaseM, double ratio, double heightM) {
        return new CarSheet(
                "invented",
                driven,
                massKg,
                30.0,
                frontShare,
                wheelbaseM,
                1.5,
                1.5,
                heightM,
                ratio,
                0.3,
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1.0,
                1.0,
                Optional.empty(),
                Optional.empty(),
                Downforce.NONE,
                List.of(),
                List.of());
    }

    /** Returns a rear-driven car with bars, strong downforce and these setup items. */
    public static CarSheet with(List<SetupItem> setup) {
        return new CarSheet(
                "invented",
                DrivenAxle.REAR,
                1100.0,
                30.0,
                0.48,
                2.5,
                1.5,
                1.5,
                0.35,
                12.0,
                0.3,
                List.of(2.8, 2.1, 1.6, 1.25, 1.0),
                OptionalDouble.of(800.0),
                OptionalDouble.empty(),
                0.9,
                0.8,
                Optional.of(new CarSheet.BarRate(10.0e3, 4.0e3)),
                Optional.of(new CarSheet.BarRate(5.0e3, 3.0e3)),
                Downforce.STRONG,
                setup,
                List.of());
    }

    /** Returns a car on the tyres of this name. */
    public static CarSheet on(String tyres, CarSheet car) {
        return new CarSheet(
                car.description(),
                car.drivenAxle(),
                car.massKg(),
                car.fuelStartKg(),
                car.frontWeightShare(),
                car.wheelbaseM(),
                car.trackFrontM(),
                car.trackRearM(),
                car.centreOfMassHeightM(),
                car.steeringRatio(),
                car.tyreRadiusM(),
                car.gearRatios(),
                car.revLimitRadPerS(),
                car.brakePressureMaxPa(),
                car.motionRatioFront(),
                car.motionRatioRear(),
                car.barFront(),
                car.barRear(),
                car.downforce(),
                car.detail(),
                car.setup(),
                List.of(new SetupLabel("front_tyre_compound", tyres, List.of())),
                car.assumed());
    }

    /** Returns that car with an item of every sort: dampers with two ways in front and with four at the rear. */
    public static CarSheet adjustable() {
        return with(List.of(
                new SetupItem("front_spring", 120.0, "N/mm", 60.0, 200.0, 5.0),
                new SetupItem("rear_spring", 140.0, "N/mm", 60.0, 200.0, 5.0),
                new SetupItem("front_bar", 4.0, "position", 1.0, 9.0, 1.0),
                new SetupItem("rear_bar", 4.0, "position", 1.0, 9.0, 1.0),
                new SetupItem("front_bump", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("front_rebound", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("rear_bump_low", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("rear_bump_high", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("rear_rebound_low", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("rear_rebound_high", 14.0, "clicks", 1.0, 30.0, 1.0),
                new SetupItem("front_bump_stop_gap", 20.0, "mm", 5.0, 40.0, 1.0),
                new SetupItem("rear_bump_stop_gap", 20.0, "mm", 5.0, 40.0, 1.0),
                new SetupItem("front_ride_height", 50.0, "mm", 40.0, 70.0, 1.0),
                new SetupItem("rear_ride_height", 60.0, "mm", 45.0, 85.0, 1.0),
                new SetupItem("front_wing", 5.0, "step", 1.0, 12.0, 1.0),
                new SetupItem("rear_wing", 6.0, "step", 1.0, 12.0, 1.0),
                new SetupItem("front_tyre_pressure", 1.8, "bar", 1.5, 2.2, 0.02),
                new SetupItem("rear_tyre_pressure", 1.8, "bar", 1.5, 2.2, 0.02),
                new SetupItem("front_camber", -3.0, "deg", -4.5, -1.0, 0.25),
                new SetupItem("rear_camber", -2.0, "deg", -3.5, 0.0, 0.25),
                new SetupItem("front_toe", 0.0, "deg", -0.3, 0.3, 0.05),
                new SetupItem("rear_toe", 0.1, "deg", -0.1, 0.4, 0.05),
                new SetupItem("brake_bias_front", 60.0, "%", 50.0, 70.0, 0.5),
                new SetupItem("diff_preload", 40.0, "Nm", 10.0, 120.0, 10.0),
                new SetupItem("diff_power_lock", 35.0, "%", 10.0, 80.0, 5.0),
                new SetupItem("diff_coast_lock", 40.0, "%", 10.0, 80.0, 5.0),
                new SetupItem("final_drive", 3.5, "ratio", 3.0, 4.4, 0.1),
                new SetupItem("gear_3", 1.6, "ratio", 1.4, 1.8, 0.02),
                new SetupItem("fuel", 30.0, "kg", 5.0, 100.0, 1.0),
                new SetupItem("ballast", 0.0, "kg", 0.0, 60.0, 5.0),
                new SetupItem("ballast_position", 0.0, "m", 0.0, 2.5, 0.1)));
    }
}
