package setwright.core.standing;

import setwright.core.car.SetupItem;
import setwright.core.handling.Phase;
import setwright.core.replay.Effect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/**
 * Where one item stands and what that does.
 *
 * @param item     as on the sheet
 * @param usual    the value that it is held against, in the item's unit: the middle of its range, or where it stood in the baseline
 * @param unusual  probability that nobody would call this place ordinary, 0..1
 * @param turned   share of the range by which it is turned in {@code effect}, not 0
 * @param effect   of turning it by that much on these laps
 */
public record ItemStanding(SetupItem item, double usual, double unusual, double turned, Prediction effect) {
    /** Returns how far it stands from what is usual, as a share of its range. */
    double place() {
        return (item.value() - usual) / (item.max() - item.min());
    }

    /** Returns the change of the balance angle from what is usual to where it stands, rad; 0 where unknown. */
    public double balanceRad(Pool pool) {
        return place() * perRange(pool);
    }

    /** Returns the same for one corner, rad; 0 where unknown. */
    public double balanceRad(int corner, Phase phase) {
        return effect.corners().stream()
                .filter(found -> found.corner() == corner)
                .flatMap(found -> found.balance(phase).stream())
                .mapToDouble(Effect::central)
                .map(rad -> place() * rad / turned)
                .filter(Double::isFinite)
                .findFirst()
                .orElse(0.0);
    }

    /** Returns what a lap is slower than with the item as is usual, s; negative: quicker; 0 where unknown. */
    public double costS() {
        double cost = place() / turned * effect.lapTimeS().central();
        return Double.isFinite(cost) ? cost : 0.0;
    }

    /** Returns the spread of {@link #costS} that the car's uncertain parameters and the driver leave, s. */
    double costSpreadS() {
        double spread = Math.abs(place() / turned) * effect.lapTimeS().deviation();
        return Double.isFinite(spread) ? spread : 0.0;
    }

    /** Returns the change of the balance angle per whole range, rad; 0 where unknown. */
    double perRange(Pool pool) {
        return effect.balance(pool.phase(), pool.speedClass())
                .map(found -> found.central() / turned)
                .filter(Double::isFinite)
                .orElse(0.0);
    }

    /** Returns the spread of {@link #balanceRad} that the car's uncertain parameters leave, rad. */
    double spreadRad(Pool pool) {
        return effect.balance(pool.phase(), pool.speedClass())
                .map(found -> Math.abs(place() / turned) * found.deviation())
                .filter(Double::isFinite)
                .orElse(0.0);
    }
}
