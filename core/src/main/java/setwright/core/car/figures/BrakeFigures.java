package setwright.core.car.figures;

import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;

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

    /**
     * Works the figures out from moments about the contact patches: {@code dW = m a h / L}; ideal share {@code (b + z h) / L}
     * with b from the centre of mass to the rear axle and z the deceleration in g.
     *
     * <p><b>Source:</b> equilibrium of the rigid car; any handbook of brake design.
     */
    static BrakeFigures of(CarSheet sheet, double massKg, double gravity) {
        double height = sheet.centreOfMassHeightM();
        double wheelbase = sheet.wheelbaseM();
        double weight = massKg * gravity;
        double transfer = weight * height / wheelbase;
        OptionalDouble bias = SetupCatalogue.valueSi(sheet, SetupCatalogue.of(SetupFamily.BRAKE_BIAS_FRONT));
        return new BrakeFigures(
                transfer,
                weight * sheet.frontWeightShare() + transfer,
                weight * (1.0 - sheet.frontWeightShare()) - transfer,
                (sheet.rearAxleToCentreM() + height) / wheelbase,
                bias,
                bias.isPresent()
                        ? OptionalDouble.of((bias.getAsDouble() * wheelbase - sheet.rearAxleToCentreM()) / height)
                        : OptionalDouble.empty());
    }

    /** Tells whether the front axle locks first at 1 g; empty without a bias. */
    public java.util.Optional<Boolean> frontLocksFirst() {
        return biasShare.isPresent()
                ? java.util.Optional.of(biasShare.getAsDouble() > idealShare)
                : java.util.Optional.empty();
    }
}
