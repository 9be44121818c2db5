package setwright.core.car.model;

import static setwright.core.car.model.Parameter.*;

import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.body.Damper;
import setwright.core.car.drive.Brakes;
import setwright.core.car.drive.Differential;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.figures.UsualDetail;
import setwright.core.car.sums.Gravity;
import setwright.core.car.tyre.CamberEffect;
import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.PressureEffect;
import setwright.core.car.tyre.RaceTyre;

/**
 * Builds a car from its sheet, a setup and one value for each uncertain parameter. Aerodynamics are expected "as the car was
 * driven": wings and ride heights of the driven setup are the reference from which a changed setup departs.
 */
public final class CarAssembler {
    private static final double STANDARD_DENSITY = 1.225;
    private static final double PEAK_SLIP_RAD = Math.toRadians(7.0);
    private static final CurveShape LONGITUDINAL_SHAPE = CurveShape.of(1.5);
    private static final double USUAL_SLIP_RATIO = 0.10;
    /** A degree of camber beside the best costs half a hundredth of the grip (common practice: up to one). */
    private static final double CAMBER_LOSS_PER_RAD2 = 0.005 / Math.pow(Math.toRadians(1.0), 2);
    /** A tenth beside the best pressure costs a hundredth of the grip (common practice). */
    private static final double PRESSURE_LOSS_SQUARE = 1.0;
    /** A wing's whole range changes its axle's downforce by this share of the middle (common practice). */
    private static final double WING_RANGE = 0.8;
    /** Drag over downforce of a wing alone (handbook wings at small aspect ratio: 1:5 to 1:8, value from memory). */
    private static final double WING_DRAG_SHARE = 0.15;

    private static final double DAMPING_RATIO = 0.65;
    private static final double DAMPER_ENDS = 4.0;
    private static final double KNEE_MPS = 0.05;
    private static final double DRIVELINE = 0.92;
    private static final double ROLLING = 0.015;
    /** Drivers change up a little before the limiter (common practice). */
    private static final double SHIFT_SHARE = 0.96;

    private final CarSheet driven;
    private final Values before;
    private final KindOfCar kind;
    private final CarDetail detail;

    /** Masses as driven: what was bought for the car (tyres, dampers, wings) does not change with fuel and ballast. */
    private final double drivenMass;

    private final double drivenToFront;

    /** Makes an assembler for a car as it was driven. */
    public CarAssembler(CarSheet driven) {
        this.driven = driven;
        this.before = new Values(driven);
        this.drivenMass = mass(before);
        this.drivenToFront = toFront(before, drivenMass);
        this.kind = KindOfCar.of(driven);
        this.detail = UsualDetail.of(driven).detail();
    }

    /** Returns the car as it was driven. */
    public CarModel build(double[] parameters) {
        return build(driven, parameters);
    }

    /**
     * Returns the car in another setup.
     *
     * @param setup       the same car's sheet with items changed
     * @param parameters  by index of {@link Parameter}
     */
    public CarModel build(CarSheet setup, double[] parameters) {
        Draw draw = new Draw(parameters);
        Values now = new Values(setup);
        double mass = mass(now);
        double toFront = toFront(now, mass);
        double toRear = driven.wheelbaseM() - toFront;
        double raisedFront = now.of("front_ride_height", 0.0) - before.of("front_ride_height", 0.0);
        double raisedRear = now.of("rear_ride_height", 0.0) - before.of("rear_ride_height", 0.0);
        double height = driven.centreOfMassHeightM() * draw.factor(HEIGHT)
                + (raisedFront * toRear + raisedRear * toFront) / driven.wheelbaseM();
        double yawInertia = detail.body().yawInertiaKgM2().orElse(mass * toFront * toRear) * draw.factor(YAW_INERTIA);
        Axle front = axle("front", now, draw, raisedFront);
        Axle rear = axle("rear", now, draw, raisedRear);
        double sprung = mass - front.unsprungMassKg() - rear.unsprungMassKg();
        double halfTrack = 0.25 * (driven.trackFrontM() + driven.trackRearM());
        Body body = new Body(
                mass,
                toFront,
                toRear,
                height,
                front,
                rear,
                // the sprung mass lies within about two thirds of the half track in roll (common practice)
                sprung * Math.pow(0.65 * halfTrack, 2),
                0.9 * sprung * toFront * toRear);
        return new CarModel(
                body,
                aero(now, draw),
                raisedFront,
                raisedRear,
                powertrain(now, draw),
                new Differential(
                        now.of("diff_preload", 30.0) * draw.factor(LOCKING),
                        now.of("diff_power_lock", 0.0) * draw.factor(LOCKING),
                        now.of("diff_coast_lock", 0.0) * draw.factor(LOCKING)),
                new Brakes(brakeShare(now, toRear, height) + draw.of(BRAKE_SHARE)),
                driven.drivenAxle(),
                driven.drivenAxle() == DrivenAxle.FRONT ? 1.0 : driven.drivenAxle() == DrivenAxle.REAR ? 0.0 : 0.4,
                engineBraking(draw),
                tyre("front", now, draw, driven.wheelbaseM() - drivenToFront),
                tyre("rear", now, draw, drivenToFront),
                now.of("front_toe", 0.0),
                now.of("rear_toe", 0.0),
                yawInertia,
                ROLLING);
    }

    private double mass(Values values) {
        return driven.massKg() + values.of("fuel", driven.fuelStartKg()) + values.of("ballast", 0.0);
    }

    private double toFront(Values values, double mass) {
        double ballast = values.of("ballast", 0.0);
        double rest = driven.frontAxleToCentreM();
        return (rest * (mass - ballast) + ballast * values.of("ballast_position", rest)) / mass;
    }

    private double brakeShare(Values now, double toRear, double height) {
        // ideal share at 0.8 g (Milliken and Milliken, 1995, value from memory)
        double ideal = (toRear + 0.8 * height) / driven.wheelbaseM();
        return now.of("brake_bias_front", ideal);
    }

    private Axle axle(String end, Values now, Draw draw, double raised) {
        boolean isFront = end.equals("front");
        CarDetail.Axle known = isFront ? detail.front() : detail.rear();
        double motionRatio = isFront ? driven.motionRatioFront() : driven.motionRatioRear();
        double unsprung = known.unsprungMassKg().orElseThrow();
        double toOther = isFront ? driven.wheelbaseM() - drivenToFront : drivenToFront;
        double corner = 0.5 * (drivenMass * toOther / driven.wheelbaseM() - unsprung);
        double usualRate = corner * Math.pow(2.0 * Math.PI * kind.rideHz(), 2);
        double square = motionRatio * motionRatio;
        double split = Math.exp((isFront ? 0.5 : -0.5) * draw.of(ROLL_SPLIT));
        double spring = now.has(end + "_spring") ? now.of(end + "_spring", 0.0) * square : usualRate;
        // dampers stay when springs are changed: what is usual for them follows the springs as driven
        double drivenSpring = before.has(end + "_spring") ? before.of(end + "_spring", 0.0) * square : usualRate;
        double bar = (isFront ? driven.barFront() : driven.barRear())
                .map(rate -> rate.baseNPerM() + rate.perPositionNPerM() * now.of(end + "_bar", 0.0))
                .orElse(0.0);
        double tyreRate = known.tyreSpringRateNPerM().orElseThrow();
        double rollCentre =
                known.rollCentreHeightM().orElseThrow() + draw.of(isFront ? ROLL_CENTRE_FRONT : ROLL_CENTRE_REAR);
        double stopGap = now.has(end + "_bump_stop_gap") ? now.of(end + "_bump_stop_gap", 0.0) / motionRatio : 1.0;
        return new Axle(
                // a bar shares the split; a spring keeps its rate in heave, and the bar takes up what the split asks in
                // roll
                spring,
                Math.max((spring + bar) * split - spring, 0.0),
                tyreRate,
                damper(end, now, draw, drivenSpring, tyreRate, corner, motionRatio, known),
                stopGap,
                known.bumpStopRateNPerM().orElse(150.0e3) * square,
                rollCentre + raised,
                draw.share(isFront ? ANTI_FRONT : ANTI_REAR),
                isFront ? driven.trackFrontM() : driven.trackRearM(),
                unsprung,
                driven.tyreRadiusM());
    }

    private Damper damper(
            String end,
            Values now,
            Draw draw,
            double drivenSpring,
            double tyreRate,
            double corner,
            double motionRatio,
            CarDetail.Axle given) {
        double critical = 2.0 * Math.sqrt(drivenSpring * tyreRate / (drivenSpring + tyreRate) * corner);
        double usual = DAMPING_RATIO * critical * draw.factor(DAMPING);
        double range = Math.log(DAMPER_ENDS) + draw.of(DAMPER_RANGE);
        double square = motionRatio * motionRatio;
        double bumpLow = clicks(now, end + "_bump", "_low", range);
        double bumpHigh = clicks(now, end + "_bump", "_high", range);
        double reboundLow = clicks(now, end + "_rebound", "_low", range);
        double reboundHigh = clicks(now, end + "_rebound", "_high", range);
        if (given.damper().isPresent()) {
            CarDetail.Damper known = given.damper().get();
            double scale = square * draw.factor(DAMPING);
            return new Damper(
                    scale * known.bumpLow() * bumpLow / clicks(before, end + "_bump", "_low", range),
                    scale * known.bumpHigh() * bumpHigh / clicks(before, end + "_bump", "_high", range),
                    scale * known.reboundLow() * reboundLow / clicks(before, end + "_rebound", "_low", range),
                    scale * known.reboundHigh() * reboundHigh / clicks(before, end + "_rebound", "_high", range),
                    known.kneeMps() / motionRatio);
        }
        // rebound above bump, and half the slope beyond the knee (common practice)
        return new Damper(
                0.8 * usual * bumpLow,
                0.4 * usual * bumpHigh,
                1.2 * usual * reboundLow,
                0.6 * usual * reboundHigh,
                KNEE_MPS);
    }

    /** Factor that the clicks make, 1 in the middle of their range; a four-way item goes before a two-way one. */
    private static double clicks(Values values, String item, String part, double range) {
        double place = values.has(item + part) ? values.place(item + part) : values.place(item);
        return Math.exp(range * place);
    }

    private AeroMap aero(Values now, Draw draw) {
        double density = detail.air().densityKgPerM3().orElse(STANDARD_DENSITY);
        double usual = kind.liftAt50() * drivenMass * Gravity.STANDARD_MPS2 / (0.5 * density * 50.0 * 50.0);
        double frontGiven = detail.air().downforceFrontM2().orElse(usual * (driven.frontWeightShare() - 0.02));
        double rearGiven = detail.air().downforceRearM2().orElse(usual * (1.02 - driven.frontWeightShare()));
        double total = (frontGiven + rearGiven) * draw.factor(LIFT);
        double share =
                (frontGiven + rearGiven > 0.0 ? frontGiven / (frontGiven + rearGiven) : 0.0) + draw.of(LIFT_BALANCE);
        double front = total * share;
        double rear = total - front;
        double frontNow = front * wing("front_wing", now, draw) / wing("front_wing", before, draw);
        double rearNow = rear * wing("rear_wing", now, draw) / wing("rear_wing", before, draw);
        double drag = detail.air().dragAreaM2().orElse(kind.dragM2()) * draw.factor(DRAG)
                + WING_DRAG_SHARE * draw.factor(WING_DRAG) * (frontNow - front + rearNow - rear);
        double ground = Math.min(kind.groundShare() * draw.factor(GROUND_EFFECT), 0.95);
        return new AeroMap(
                frontNow,
                rearNow,
                drag,
                before.of("front_ride_height", 0.06),
                before.of("rear_ride_height", 0.07),
                ground,
                0.5 * ground,
                draw.of(RAKE_EFFECT),
                density);
    }

    private static double wing(String item, Values values, Draw draw) {
        return Math.max(1.0 + WING_RANGE * draw.factor(WING_EFFECT) * values.place(item), 0.1);
    }

    private Powertrain powertrain(Values now, Draw draw) {
        CarDetail.Engine engine = detail.engine();
        double limit = driven.revLimitRadPerS().orElse(7000.0 * Math.PI / 30.0);
        double factor = draw.factor(POWER);
        double[] speeds;
        double[] torques;
        if (engine.torque().isEmpty()) {
            double power = engine.powerW().orElse(kind.powerWPerKg() * driven.massKg()) * factor;
            speeds = new double[21];
            torques = new double[21];
            double most = 0.0;
            for (int i = 0; i < speeds.length; i++) {
                speeds[i] = limit * (0.2 + 0.8 * i / 20.0);
                torques[i] = Powertrain.usualTorqueShape(speeds[i] / limit - draw.of(TORQUE_PEAK));
                most = Math.max(most, speeds[i] * torques[i]);
            }
            for (int i = 0; i < speeds.length; i++) {
                torques[i] *= power / most;
            }
        } else {
            speeds = engine.torque().stream()
                    .mapToDouble(CarDetail.TorquePoint::radPerS)
                    .toArray();
            torques = engine.torque().stream()
                    .mapToDouble(point -> factor * point.torqueNm())
                    .toArray();
        }
        double[] ratios = driven.gearRatios().isEmpty()
                ? new double[] {3.0, 2.2, 1.7, 1.35, 1.1}
                : driven.gearRatios().stream().mapToDouble(Double::doubleValue).toArray();
        for (int gear = 0; gear < ratios.length; gear++) {
            ratios[gear] = now.of("gear_" + (gear + 1), ratios[gear]);
        }
        return new Powertrain(
                speeds,
                torques,
                ratios,
                now.of("final_drive", 3.7),
                driven.tyreRadiusM(),
                limit,
                within(SHIFT_SHARE + draw.of(SHIFT), 0.8, 0.995) * limit,
                engine.efficiency().orElse(DRIVELINE));
    }

    private double engineBraking(Draw draw) {
        double limit = driven.revLimitRadPerS().orElse(7000.0 * Math.PI / 30.0);
        double power = detail.engine().powerW().orElse(kind.powerWPerKg() * driven.massKg()) * draw.factor(POWER);
        // motoring torque of an eighth of the greatest (common practice)
        return detail.engine().brakingTorqueNm().orElse(0.125 * power / (0.9 * limit)) * draw.factor(ENGINE_BRAKING);
    }

    private MountedTyre tyre(String end, Values now, Draw draw, double toOther) {
        boolean isFront = end.equals("front");
        double side = isFront ? 0.5 : -0.5;
        double ownLoad = 0.5 * drivenMass * Gravity.STANDARD_MPS2 * toOther / driven.wheelbaseM();
        double meanLoad = 0.25 * drivenMass * Gravity.STANDARD_MPS2;
        // tyres are sized for their axle; a front-drive car often has four alike
        double nominal = driven.drivenAxle() == DrivenAxle.FRONT ? 0.5 * (ownLoad + meanLoad) : ownLoad;
        double camberMiddle = before.middle(end + "_camber", Math.toRadians(-2.5));
        double camberBest = camberMiddle + draw.of(isFront ? CAMBER_BEST_FRONT : CAMBER_BEST_REAR);
        double camberLoss = CAMBER_LOSS_PER_RAD2 * draw.factor(CAMBER_LOSS);
        double pressureBest = before.middle(end + "_tyre_pressure", 1.0)
                * (1.0 + draw.of(isFront ? PRESSURE_BEST_FRONT : PRESSURE_BEST_REAR));
        double friction =
                detail.tyre().grip().orElse(kind.friction()) * draw.factor(GRIP) * Math.exp(side * draw.of(GRIP_SPLIT));
        double peakSlip = detail.tyre().peakSlipAngleRad().orElse(PEAK_SLIP_RAD)
                * draw.factor(PEAK_SLIP)
                * Math.exp(side * draw.of(PEAK_SLIP_SPLIT));
        RaceTyre tyre = new RaceTyre(
                nominal,
                friction,
                friction * draw.factor(GRIP_ALONG),
                within(draw.of(LOAD_SENSITIVITY), 0.01, 0.6),
                within(peakSlip, 0.02, 0.5),
                within(draw.of(PEAK_SLIP_LOAD), -0.5, 0.9),
                USUAL_SLIP_RATIO * draw.factor(PEAK_SLIP_RATIO),
                MountedTyre.SHAPE,
                LONGITUDINAL_SHAPE,
                // braking and driving want the wheel upright; camber takes half as much from them (common practice)
                new CamberEffect(within(camberBest, -0.3, 0.0), camberLoss, 0.5 * camberLoss, 0.0),
                new PressureEffect(
                        within(draw.of(PRESSURE_STIFFNESS), -2.0, 3.0),
                        PRESSURE_LOSS_SQUARE * draw.factor(PRESSURE_LOSS)));
        return new MountedTyre(
                tyre,
                now.of(end + "_camber", camberMiddle),
                now.of(end + "_tyre_pressure", pressureBest) / pressureBest);
    }

    private static double within(double value, double least, double most) {
        return Math.max(least, Math.min(value, most));
    }

    @SuppressWarnings("ArrayRecordComponent") // lives for one call
    private record Draw(double... values) {
        double of(Parameter parameter) {
            return values[parameter.index()];
        }

        double factor(Parameter parameter) {
            return Math.exp(of(parameter));
        }

        double share(Parameter parameter) {
            return Math.max(0.0, Math.min(of(parameter), 0.9));
        }
    }
}
