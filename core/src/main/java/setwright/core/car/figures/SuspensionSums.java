package setwright.core.car.figures;

import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupPlace;
import setwright.core.car.sums.Damping;
import setwright.core.car.sums.Gravity;
import setwright.core.car.sums.LateralTransfer;
import setwright.core.car.sums.Ride;
import setwright.core.car.sums.RollStiffness;

/** Ride, roll and lateral load transfer of the car on its suspension; the unsprung mass lies at the wheel centre. */
final class SuspensionSums {
    private final CarSheet sheet;
    private final CarDetail detail;
    private final double massKg;

    SuspensionSums(CarSheet sheet, CarDetail detail, double massKg) {
        this.sheet = sheet;
        this.detail = detail;
        this.massKg = massKg;
    }

    AxleFigures axle(SetupPlace end) {
        boolean front = end == SetupPlace.FRONT;
        double share = front ? sheet.frontWeightShare() : 1.0 - sheet.frontWeightShare();
        double sprung = massKg * share - unsprung(end);
        OptionalDouble spring = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.SPRING, end));
        Optional<AxleFigures.Ride> ride =
                spring.isPresent() ? Optional.of(ride(end, spring.getAsDouble(), 0.5 * sprung)) : Optional.empty();
        return new AxleFigures(
                massKg * share * Gravity.STANDARD_MPS2, sprung, ride, ride.flatMap(r -> roll(end, r.wheelRateNPerM())));
    }

    private AxleFigures.Ride ride(SetupPlace end, double spring, double cornerKg) {
        double motionRatio = end == SetupPlace.FRONT ? sheet.motionRatioFront() : sheet.motionRatioRear();
        double wheelRate = Ride.wheelRate(spring, motionRatio);
        double rideRate = Ride.rideRate(wheelRate, tyreRate(end));
        double critical = Damping.atDamper(Damping.critical(wheelRate, cornerKg), motionRatio);
        return new AxleFigures.Ride(
                spring,
                wheelRate,
                rideRate,
                Ride.frequencyHz(rideRate, cornerKg),
                given(end)
                        .damper()
                        .map(damper -> new AxleFigures.Damping(
                                damper.bumpLow() / critical,
                                damper.bumpHigh() / critical,
                                damper.reboundLow() / critical,
                                damper.reboundHigh() / critical)));
    }

    private Optional<AxleFigures.Roll> roll(SetupPlace end, double wheelRate) {
        Optional<CarSheet.BarRate> rate = end == SetupPlace.FRONT ? sheet.barFront() : sheet.barRear();
        OptionalDouble position = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.BAR, end));
        if (rate.isPresent() != position.isPresent()) {
            return Optional.empty();
        }
        double bar = rate.map(r -> r.baseNPerM() + r.perPositionNPerM() * position.orElse(0.0))
                .orElse(0.0);
        return Optional.of(new AxleFigures.Roll(
                RollStiffness.axle(wheelRate, 0.0, track(end)),
                RollStiffness.axle(0.0, bar, track(end)),
                RollStiffness.axle(Ride.rideRate(wheelRate + bar, tyreRate(end)), 0.0, track(end))));
    }

    /** Roll and load transfer at 1 g; empty when springs or bars are not known or do not hold the body up. */
    Optional<RollFigures> roll(AxleFigures front, AxleFigures rear) {
        if (front.roll().isEmpty() || rear.roll().isEmpty()) {
            return Optional.empty();
        }
        AxleFigures.Roll rollFront = front.roll().orElseThrow();
        AxleFigures.Roll rollRear = rear.roll().orElseThrow();
        LateralTransfer.Axle frontAxle = transferring(SetupPlace.FRONT, rollFront);
        LateralTransfer.Axle rearAxle = transferring(SetupPlace.REAR, rollRear);
        LateralTransfer.Body body = LateralTransfer.Body.of(
                massKg,
                sheet.centreOfMassHeightM(),
                sheet.frontAxleToCentreM(),
                sheet.rearAxleToCentreM(),
                frontAxle,
                rearAxle);
        // the longest arm the body can have; a car so near to falling over has no roll worth telling
        double arm = body.heightM() - Math.min(frontAxle.rollCentreM(), rearAxle.rollCentreM());
        if (!(rollFront.totalNmPerRad() + rollRear.totalNmPerRad() > body.massKg() * Gravity.STANDARD_MPS2 * arm)) {
            return Optional.empty();
        }
        LateralTransfer transfer = new LateralTransfer(body, frontAxle, rearAxle);
        double oneG = Gravity.STANDARD_MPS2;
        return Optional.of(new RollFigures(
                transfer.rollRad(oneG),
                parts(frontAxle, front, transfer.frontN(oneG)),
                parts(rearAxle, rear, transfer.rearN(oneG)),
                RollStiffness.frontShare(rollFront.suspensionNmPerRad(), rollRear.suspensionNmPerRad())));
    }

    private LateralTransfer.Axle transferring(SetupPlace end, AxleFigures.Roll roll) {
        return new LateralTransfer.Axle(
                roll.totalNmPerRad(),
                given(end).rollCentreHeightM().orElseThrow(),
                track(end),
                unsprung(end),
                sheet.tyreRadiusM());
    }

    private static RollFigures.Transfer parts(LateralTransfer.Axle axle, AxleFigures figures, double totalN) {
        double oneG = Gravity.STANDARD_MPS2;
        double geometric = figures.sprungMassKg() * oneG * axle.rollCentreM() / axle.trackM();
        double own = axle.unsprungKg() * oneG * axle.unsprungHeightM() / axle.trackM();
        double lift = totalN > 0.0 ? figures.wheelLoadN() / totalN : Double.POSITIVE_INFINITY;
        return new RollFigures.Transfer(totalN - geometric - own, geometric, own, lift);
    }

    private CarDetail.Axle given(SetupPlace end) {
        return end == SetupPlace.FRONT ? detail.front() : detail.rear();
    }

    private double unsprung(SetupPlace end) {
        return given(end).unsprungMassKg().orElseThrow();
    }

    private double tyreRate(SetupPlace end) {
        return given(end).tyreSpringRateNPerM().orElseThrow();
    }

    private double track(SetupPlace end) {
        return end == SetupPlace.FRONT ? sheet.trackFrontM() : sheet.trackRearM();
    }
}
