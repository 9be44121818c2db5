package setwright.core.car.figures.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.core.car.figures.AxleFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.RollFigures;
import setwright.core.car.figures.UndersteerModel;
import setwright.core.car.sums.Gravity;

/**
 * Worked examples with the formulas of W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics, SAE International, 1995,
 * chapters 16 and 18 (load transfer, ride), calculated apart from this code with g = 9.81 m/s².
 */
final class FiguresAgainstHandbooksTest {
    /** Standard gravity is 0.034 % below 9.81; the roll angle's denominator adds a little. */
    private static final double OTHER_GRAVITY = 5.0e-4;

    private static final double RIGID_TYRE = 1.0e15;
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** Sprung 1000 kg at 0.55 m, roll centres at 0.05 and 0.10 m, 40 and 30 kNm/rad, 100 kg unsprung an axle at 0.30 m. */
    @Test
    void rollAndLoadTransferAtOneG() {
        double heightM = (1000.0 * 0.55 + 200.0 * 0.30) / 1200.0;
        double frontShare = (1000.0 * 1.35 / 2.6 + 100.0) / 1200.0;
        CarSheet car = car(
                1200.0,
                0.0,
                frontShare,
                1.5,
                heightM,
                0.30,
                1.0,
                detail(0.05, 0.10, 100.0, RIGID_TYRE, Optional.empty(), CarDetail.NONE),
                List.of(
                        new SetupItem("front_spring", 40_000.0 / 1.125, "N/m", 1.0, 1.0e6, 1.0),
                        new SetupItem("rear_spring", 30_000.0 / 1.125, "N/m", 1.0, 1.0e6, 1.0)));
        CarFigures figures = CarFigures.of(car, UndersteerModel.NONE);
        RollFigures roll = figures.roll().orElseThrow();
        assertThat(Math.toDegrees(roll.gradientRad())).isCloseTo(4.0949, relative(4.0949));
        assertThat(roll.front().totalN()).isCloseTo(2271.85, relative(2271.85));
        assertThat(roll.rear().totalN()).isCloseTo(1940.02, relative(1940.02));
        assertThat(roll.transferShare()).isCloseTo(0.53939, within(5.0e-5));
        assertThat(roll.stiffnessShare()).isCloseTo(40.0 / 70.0, within(1.0e-9));
        assertThat(figures.front().roll().orElseThrow().suspensionNmPerRad()).isCloseTo(40_000.0, within(1.0e-6));
    }

    /** Spring 25 kN/m, motion ratio 0.8, tyre 200 kN/m, 250 kg a corner: 16 and 14.8148 kN/m, 1.2252 Hz; 4375 Ns/m is 0.7. */
    @Test
    void rideAndDampingOfOneCorner() {
        CarDetail.Damper damper = new CarDetail.Damper(4375.0, 4375.0 / 2.0, 4375.0 * 2.0, 4375.0, 0.05, NONE);
        CarSheet car = car(
                1100.0,
                0.0,
                0.5,
                1.5,
                0.45,
                0.3,
                0.8,
                detail(0.0, 0.0, 50.0, 200_000.0, Optional.of(damper), CarDetail.NONE),
                List.of(
                        new SetupItem("front_spring", 25.0, "N/mm", 1.0, 100.0, 1.0),
                        new SetupItem("rear_spring", 25.0, "N/mm", 1.0, 100.0, 1.0)));
        AxleFigures.Ride ride =
                CarFigures.of(car, UndersteerModel.NONE).front().ride().orElseThrow();
        double lastPrintedDigit = 5.0e-5;
        assertThat(ride.wheelRateNPerM()).isCloseTo(16_000.0, within(1.0e-6));
        assertThat(ride.rideRateNPerM()).isCloseTo(14_814.8, within(0.05));
        assertThat(ride.frequencyHz()).isCloseTo(1.2252, within(lastPrintedDigit));
        assertThat(ride.damping().orElseThrow().bumpLow()).isCloseTo(0.7, within(lastPrintedDigit));
        assertThat(ride.damping().orElseThrow().reboundLow()).isCloseTo(1.4, within(lastPrintedDigit));
    }

    /** 1200 kg, 0.5 m high, wheelbase 2.6 m, 1.25 m behind the front axle: 2263.85 N and an ideal share of 0.7115 at 1 g. */
    @Test
    void brakingAtOneG() {
        CarSheet car = car(
                1170.0,
                30.0,
                1.35 / 2.6,
                1.5,
                0.5,
                0.3,
                1.0,
                CarDetail.NONE,
                List.of(new SetupItem("brake_bias_front", 67.31, "%", 50.0, 80.0, 0.5)));
        CarFigures figures = CarFigures.of(car, UndersteerModel.NONE);
        assertThat(figures.brakes().transferN()).isCloseTo(2263.85, relative(2263.85));
        assertThat(figures.front().loadN()).isCloseTo(6112.38, relative(6112.38));
        assertThat(figures.brakes().idealShare()).isCloseTo(0.7115, within(5.0e-5));
        // 0.6731 is the ideal share at 0.8 g
        assertThat(figures.brakes().togetherG().orElseThrow()).isCloseTo(0.8, within(3.0e-4));
        assertThat(figures.brakes().frontLocksFirst()).contains(false);
    }

    /** 100 kW, 0.65 m², 1.225 kg/m³ and no rolling resistance give 227.14 km/h, with 0.012 of it 219.83; here it is 0.015. */
    @Test
    void topSpeedAndGears() {
        CarDetail detail = new CarDetail(
                CarDetail.NONE.front(),
                CarDetail.NONE.rear(),
                CarDetail.NONE.body(),
                new CarDetail.Air(OptionalDouble.of(0.65), NONE, NONE, OptionalDouble.of(1.225)),
                new CarDetail.Engine(OptionalDouble.of(100_000.0), List.of(), NONE, NONE, OptionalDouble.of(1.0)),
                CarDetail.NONE.tyre());
        CarFigures figures = CarFigures.of(
                car(
                        1300.0,
                        0.0,
                        0.5,
                        1.5,
                        0.5,
                        0.31,
                        1.0,
                        detail,
                        List.of(new SetupItem("final_drive", 3.9, "ratio", 3.0, 5.0, 0.1))),
                UndersteerModel.NONE);
        double speed = figures.speeds().byPowerMps().orElseThrow();
        double needed = 0.5 * 1.225 * 0.65 * Math.pow(speed, 3) + 0.015 * 1300.0 * Gravity.STANDARD_MPS2 * speed;
        assertThat(needed).isCloseTo(100_000.0, within(0.01));
        assertThat(3.6 * speed).isBetween(217.0, 219.83);
        // tyre radius 0.31 m, 7000 rpm, final drive 3.9
        assertThat(3.6 * figures.speeds().gears().get(0).atLimitMps()).isCloseTo(83.90, within(5.0e-3));
        assertThat(3.6 * figures.speeds().byLimiterMps().orElseThrow()).isCloseTo(209.76, within(5.0e-3));
        assertThat(figures.speeds().gears().get(0).afterShiftRadPerS().orElseThrow())
                .isCloseTo(7000.0 * Math.PI / 30.0 / 2.5, within(1.0e-9));
    }

    private static Offset<Double> relative(double value) {
        return within(OTHER_GRAVITY * value);
    }

    private static CarDetail detail(
            double rollCentreFront,
            double rollCentreRear,
            double unsprungKg,
            double tyreRate,
            Optional<CarDetail.Damper> damper,
            CarDetail rest) {
        return new CarDetail(
                axle(rollCentreFront, unsprungKg, tyreRate, damper),
                axle(rollCentreRear, unsprungKg, tyreRate, damper),
                rest.body(),
                rest.air(),
                rest.engine(),
                rest.tyre());
    }

    private static CarDetail.Axle axle(
            double rollCentre, double unsprungKg, double tyreRate, Optional<CarDetail.Damper> damper) {
        return new CarDetail.Axle(
                OptionalDouble.of(rollCentre),
                OptionalDouble.of(unsprungKg),
                OptionalDouble.of(tyreRate),
                NONE,
                NONE,
                damper);
    }

    private static CarSheet car(
            double massKg,
            double fuelKg,
            double frontShare,
            double trackM,
            double heightM,
            double tyreRadiusM,
            double motionRatio,
            CarDetail detail,
            List<SetupItem> setup) {
        return new CarSheet(
                "invented",
                DrivenAxle.REAR,
                massKg,
                fuelKg,
                frontShare,
                2.6,
                trackM,
                trackM,
                heightM,
                14.0,
                tyreRadiusM,
                List.of(2.5, 1.0),
                OptionalDouble.of(7000.0 * Math.PI / 30.0),
                NONE,
                motionRatio,
                motionRatio,
                Optional.empty(),
                Optional.empty(),
                Downforce.NONE,
                detail,
                setup,
                List.of(),
                List.of());
    }
}
