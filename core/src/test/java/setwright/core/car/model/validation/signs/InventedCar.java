package setwright.core.car.model.validation.signs;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.CarSheet.BarRate;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;

/** Three invented cars, each with everything on its sheet in the middle of its range, and where it is looked at. */
enum InventedCar {
    /** Rear drive, some downforce. */
    TOURER(35.0),
    /** Front drive, no downforce, free differential. */
    HATCH(25.0),
    /** Rear drive, strong downforce. */
    WINGED(45.0);

    /** Speed of the corner, m/s. */
    final double speedMps;

    InventedCar(double speedMps) {
        this.speedMps = speedMps;
    }

    boolean rearDrive() {
        return this != HATCH;
    }

    boolean hasDownforce() {
        return this != HATCH;
    }

    CarSheet sheet() {
        return switch (this) {
            case TOURER ->
                sheet(DrivenAxle.REAR, 1240.0, 0.51, 2.65, 1.58, 1.56, 0.46, 0.32, 90.0, 80.0, Downforce.MODERATE);
            case HATCH ->
                sheet(DrivenAxle.FRONT, 1120.0, 0.61, 2.55, 1.52, 1.50, 0.49, 0.30, 70.0, 75.0, Downforce.NONE);
            case WINGED ->
                sheet(DrivenAxle.REAR, 670.0, 0.455, 2.90, 1.60, 1.55, 0.30, 0.29, 150.0, 140.0, Downforce.STRONG);
        };
    }

    CarModel car() {
        return with(List.of());
    }

    /** Returns the car with items of its sheet changed; aerodynamics refer to the unchanged one. */
    CarModel with(List<SetupChange> changes) {
        CarSheet sheet = sheet();
        return new CarAssembler(sheet)
                .build(sheet.with(changes), CarPrior.of(sheet).middle());
    }

    CarModel with(String item, double value) {
        double from = sheet().item(item).orElseThrow().value();
        return with(List.of(new SetupChange(item, from, value)));
    }

    private static CarSheet sheet(
            DrivenAxle driven,
            double mass,
            double frontShare,
            double wheelbase,
            double trackFront,
            double trackRear,
            double height,
            double tyreRadius,
            double springFront,
            double springRear,
            Downforce downforce) {
        return new CarSheet(
                "invented",
                driven,
                mass,
                40.0,
                frontShare,
                wheelbase,
                trackFront,
                trackRear,
                height,
                13.0,
                tyreRadius,
                List.of(2.8, 2.1, 1.65, 1.35, 1.12, 0.96),
                OptionalDouble.of(7500.0 * Math.PI / 30.0),
                OptionalDouble.empty(),
                0.9,
                0.9,
                Optional.of(new BarRate(8000.0, 4000.0)),
                Optional.of(new BarRate(4000.0, 3500.0)),
                downforce,
                items(springFront, springRear, driven == DrivenAxle.FRONT ? 0.0 : 1.0),
                List.of());
    }

    private static List<SetupItem> items(double springFront, double springRear, double locking) {
        return List.of(
                item("front_spring", springFront, "N/mm", 0.5 * springFront, 1.5 * springFront),
                item("rear_spring", springRear, "N/mm", 0.5 * springRear, 1.5 * springRear),
                item("front_bar", 5.0, "position", 1.0, 9.0),
                item("rear_bar", 5.0, "position", 1.0, 9.0),
                item("front_bump", 15.0, "clicks", 1.0, 29.0),
                item("front_rebound", 15.0, "clicks", 1.0, 29.0),
                item("rear_bump", 15.0, "clicks", 1.0, 29.0),
                item("rear_rebound", 15.0, "clicks", 1.0, 29.0),
                item("front_bump_stop_gap", 60.0, "mm", 1.0, 119.0),
                item("front_ride_height", 60.0, "mm", 30.0, 90.0),
                item("rear_ride_height", 70.0, "mm", 40.0, 100.0),
                item("front_wing", 10.0, "step", 1.0, 19.0),
                item("rear_wing", 10.0, "step", 1.0, 19.0),
                item("front_tyre_pressure", 1.8, "bar", 1.4, 2.2),
                item("rear_tyre_pressure", 1.8, "bar", 1.4, 2.2),
                item("front_camber", -2.5, "deg", -4.5, -0.5),
                item("rear_camber", -2.0, "deg", -4.0, 0.0),
                item("front_toe", 0.0, "deg", -0.5, 0.5),
                item("rear_toe", 0.1, "deg", -0.4, 0.6),
                item("brake_bias_front", 62.0, "%", 50.0, 74.0),
                item("diff_preload", 60.0 * locking, "Nm", 0.0, 120.0),
                item("diff_power_lock", 35.0 * locking, "%", 0.0, 70.0),
                item("diff_coast_lock", 35.0 * locking, "%", 0.0, 70.0),
                item("final_drive", 3.7, "ratio", 3.0, 4.4),
                item("ballast", 40.0, "kg", 0.0, 80.0),
                item("ballast_position", 1.3, "m", 0.0, 2.6));
    }

    private static SetupItem item(String name, double value, String unit, double min, double max) {
        return new SetupItem(name, value, unit, min, max, 0.01);
    }
}
