package setwright.core.car.figures;

import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.sums.Brakes;
import setwright.core.car.sums.Gravity;
import setwright.core.car.sums.LoadTransfer;

/**
 * Straight braking without downforce, equal tyres on both axles.
 *
 * @param transferN    load moved to the front axle at 1 g, N
 * @param frontLoadN   of the front axle at 1 g, N
 * @param rearLoadN    of the rear axle at 1 g, N
 * @param idealShare   front share of the brake force at which both axles lock together at 1 g, 0..1
 * @param biasShare    front share on the sheet, 0..1, when given
 * @param togetherG    deceleration at which the sheet's bias locks both axles together, g; below it the front axle locks
 *                     first, above it the rear one
 */
public record BrakeFigures(
        double transferN,
        double frontLoadN,
        double rearLoadN,
        double idealShare,
        OptionalDouble biasShare,
        OptionalDouble togetherG) {

    static BrakeFigures of(CarSheet sheet, double massKg) {
        double oneG = Gravity.STANDARD_MPS2;
        Brakes brakes =
                new Brakes(massKg, sheet.frontAxleToCentreM(), sheet.rearAxleToCentreM(), sheet.centreOfMassHeightM());
        OptionalDouble bias = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.BRAKE_BIAS_FRONT));
        return new BrakeFigures(
                -LoadTransfer.toRearAxle(massKg, -oneG, sheet.centreOfMassHeightM(), sheet.wheelbaseM()),
                brakes.frontLoadN(oneG),
                brakes.rearLoadN(oneG),
                brakes.idealFrontShare(oneG),
                bias,
                bias.isPresent()
                        ? OptionalDouble.of(brakes.decelerationOfIdeal(bias.getAsDouble()) / oneG)
                        : OptionalDouble.empty());
    }

    /** Tells whether the front axle locks first at 1 g; empty without a bias. */
    public Optional<Boolean> frontLocksFirst() {
        return biasShare.isPresent() ? Optional.of(biasShare.getAsDouble() > idealShare) : Optional.empty();
    }
}
