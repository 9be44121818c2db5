package setwright.core.car.figures;

import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupPlace;

/**
 * Ride, roll and lateral load transfer of the car on its suspension.
 *
 * <p><b>Source:</b> W. F. Milliken and D. L. Milliken, <i>Race Car Vehicle Dynamics</i>, SAE International, 1995, chapters 16
 * and 18 (formulas from memory); small roll angle, roll axis through both roll centres, rigid body.
 */
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
        CarDetail.Axle given = given(end);
        double share = front ? sheet.frontWeightShare() : 1.0 - sheet.frontWeightShare();
        double sprung = massKg * share - given.unsprungMassKg().orElseThrow();
        double motionRatio = front ? sheet.motionRatioFront() : sheet.motionRatioRear();
        OptionalDouble spring = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.SPRING, end));
        Optional<AxleFigures.Ride> ride = spring.isPresent()
                ? Optional.of(ride(spring.getAsDouble(), motionRatio, 0.5 * sprung, given))
                : Optional.empty();
        return new AxleFigures(
                massKg * share * CarFigures.GRAVITY, sprung, ride, ride.flatMap(r -> roll(end, r.wheelRateNPerM())));
    }

    private static AxleFigures.Ride ride(double spring, double motionRatio, double massKg, CarDetail.Axle given) {
        double wheelRate = spring * motionRatio * motionRatio;
        double rideRate = series(wheelRate, given.tyreSpringRateNPerM().orElseThrow());
        double critical = 2.0 * Math.sqrt(wheelRate * massKg) / (motionRatio * motionRatio);
        return new AxleFigures.Ride(
                spring,
                wheelRate,
                rideRate,
                Math.sqrt(rideRate / massKg) / (2.0 * Math.PI),
                given.damper()
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
        double lever = 0.5 * track(end) * track(end);
        double tyre = lever * given(end).tyreSpringRateNPerM().orElseThrow();
        return Optional.of(
                new AxleFigures.Roll(lever * wheelRate, lever * bar, series(lever * (wheelRate + bar), tyre)));
    }

    /**
     * Roll and load transfer at 1 g: roll {@code phi = m_s a d / (K_f + K_r - m_s g d)} with d from the roll axis to the
     * sprung centre of mass; per axle {@code (K phi + m_s s a z + m_u a h_u) / t} with s the sprung share, z the roll
     * centre's height and the unsprung mass at the height of the wheel centre.
     */
    Optional<RollFigures> roll(AxleFigures front, AxleFigures rear) {
        if (front.roll().isEmpty() || rear.roll().isEmpty()) {
            return Optional.empty();
        }
        double sprung = front.sprungMassKg() + rear.sprungMassKg();
        double unsprung = massKg - sprung;
        double height = (massKg * sheet.centreOfMassHeightM() - unsprung * sheet.tyreRadiusM()) / sprung;
        double frontShare = front.sprungMassKg() / sprung;
        double axisHeight =
                frontShare * rollCentre(SetupPlace.FRONT) + (1.0 - frontShare) * rollCentre(SetupPlace.REAR);
        double lever = height - axisHeight;
        double stiffFront = front.roll().orElseThrow().totalNmPerRad();
        double stiffRear = rear.roll().orElseThrow().totalNmPerRad();
        double angle =
                sprung * CarFigures.GRAVITY * lever / (stiffFront + stiffRear - sprung * CarFigures.GRAVITY * lever);
        double springsFront = front.roll().orElseThrow().suspensionNmPerRad();
        double springsRear = rear.roll().orElseThrow().suspensionNmPerRad();
        return Optional.of(new RollFigures(
                angle,
                transfer(SetupPlace.FRONT, front, stiffFront * angle),
                transfer(SetupPlace.REAR, rear, stiffRear * angle),
                springsFront / (springsFront + springsRear)));
    }

    private RollFigures.Transfer transfer(SetupPlace end, AxleFigures axle, double elasticMoment) {
        double track = track(end);
        double unsprung = given(end).unsprungMassKg().orElseThrow();
        double elastic = elasticMoment / track;
        double geometric = axle.sprungMassKg() * CarFigures.GRAVITY * rollCentre(end) / track;
        double own = unsprung * CarFigures.GRAVITY * sheet.tyreRadiusM() / track;
        return new RollFigures.Transfer(elastic, geometric, own, axle.wheelLoadN() / (elastic + geometric + own));
    }

    private CarDetail.Axle given(SetupPlace end) {
        return end == SetupPlace.FRONT ? detail.front() : detail.rear();
    }

    private double track(SetupPlace end) {
        return end == SetupPlace.FRONT ? sheet.trackFrontM() : sheet.trackRearM();
    }

    private double rollCentre(SetupPlace end) {
        return given(end).rollCentreHeightM().orElseThrow();
    }

    private static double series(double one, double other) {
        return one * other / (one + other);
    }
}
