package setwright.core.car.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupPlace;

/**
 * What follows from a car sheet, with the fuel of the start on board and without downforce.
 *
 * @param massKg              with driver and fuel, kg
 * @param front               front axle
 * @param rear                rear axle
 * @param roll                steady cornering, when springs and bars are known
 * @param brakes              straight braking
 * @param speeds              gears and top speed
 * @param rakeRad             slope of the floor, nose down positive, rad, when both ride heights are known
 * @param understeerGradient  rad/(m/s²), when a model tells it
 * @param assumed             usual values that were used
 * @param untold              what could not be told: one sentence each, naming the key that would tell it
 */
public record CarFigures(
        double massKg,
        AxleFigures front,
        AxleFigures rear,
        Optional<RollFigures> roll,
        BrakeFigures brakes,
        SpeedFigures speeds,
        OptionalDouble rakeRad,
        OptionalDouble understeerGradient,
        List<Assumption> assumed,
        List<String> untold) {
    public CarFigures {
        assumed = List.copyOf(assumed);
        untold = List.copyOf(untold);
    }

    /**
     * Works the figures out.
     *
     * @param sheet       of the car
     * @param understeer  tells the understeer gradient; {@link UndersteerModel#NONE} where there is no model
     */
    public static CarFigures of(CarSheet sheet, UndersteerModel understeer) {
        UsualDetail usual = UsualDetail.of(sheet);
        CarDetail detail = usual.detail();
        double mass = sheet.massKg() + sheet.fuelStartKg();
        SuspensionSums sums = new SuspensionSums(sheet, detail, mass);
        AxleFigures front = sums.axle(SetupPlace.FRONT);
        AxleFigures rear = sums.axle(SetupPlace.REAR);
        Optional<RollFigures> roll = sums.roll(front, rear);
        SpeedFigures speeds = SpeedFigures.of(sheet, detail, mass);
        return new CarFigures(
                mass,
                front,
                rear,
                roll,
                BrakeFigures.of(sheet, mass),
                speeds,
                rake(sheet),
                understeer.gradient(sheet),
                usual.assumed(),
                untold(sheet, front, rear, roll, speeds));
    }

    private static OptionalDouble rake(CarSheet sheet) {
        OptionalDouble front =
                SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, SetupPlace.FRONT));
        OptionalDouble rear =
                SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.RIDE_HEIGHT, SetupPlace.REAR));
        return front.isPresent() && rear.isPresent()
                ? OptionalDouble.of(Math.atan((rear.getAsDouble() - front.getAsDouble()) / sheet.wheelbaseM()))
                : OptionalDouble.empty();
    }

    private static List<String> untold(
            CarSheet sheet, AxleFigures front, AxleFigures rear, Optional<RollFigures> roll, SpeedFigures speeds) {
        List<String> untold = new ArrayList<>();
        if (front.ride().isEmpty() || rear.ride().isEmpty()) {
            untold.add("Ride frequencies need front_spring and rear_spring in the setup.");
        } else if (front.roll().isEmpty() || rear.roll().isEmpty()) {
            untold.add("Roll and lateral load transfer need bar_wheel_rate_front_N_per_mm and"
                    + " bar_wheel_rate_rear_N_per_mm with front_bar and rear_bar in the setup.");
        } else if (roll.isEmpty()) {
            untold.add(
                    "Roll and lateral load transfer: these springs and bars hardly hold the body up; check front_spring,"
                            + " rear_spring and their units.");
        }
        List<String> bars = new ArrayList<>();
        if (sheet.barFront().isEmpty()) {
            bars.add("front");
        }
        if (sheet.barRear().isEmpty()) {
            bars.add("rear");
        }
        if (roll.isPresent() && !bars.isEmpty()) {
            untold.add("The sheet has no " + String.join(" and no ", bars) + " bar: roll is counted without.");
        }
        if (sheet.detail().front().damper().isEmpty()
                || sheet.detail().rear().damper().isEmpty()) {
            untold.add("Damping ratios need damper_rate_front_Ns_per_m and damper_rate_rear_Ns_per_m; clicks alone say"
                    + " nothing about force.");
        }
        if (speeds.gears().isEmpty()) {
            untold.add("Speeds per gear need gear_ratios, rev_limit_rpm and final_drive in the setup.");
        }
        if (speeds.byPowerMps().isEmpty()) {
            untold.add("Top speed by power needs engine_power_kW or engine_torque_curve.");
        }
        return untold;
    }
}
