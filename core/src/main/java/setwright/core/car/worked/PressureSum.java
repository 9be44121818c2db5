package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.TyrePressure;

/**
 * Cold and hot tyre pressure, above that of the air around.
 *
 * @param where            which tyres, such as {@code front}; empty when there are just ones
 * @param coldTemperature  {@code T_c}
 * @param hotTemperature   {@code T_h}
 * @param ambient          pressure of the air, {@code p_a}
 * @param cold             {@code p_c}, to find the hot pressure
 * @param hot              wanted, {@code p_h}, to find the cold pressure
 */
public record PressureSum(
        String where,
        Input coldTemperature,
        Input hotTemperature,
        Input ambient,
        Optional<Input> cold,
        Optional<Input> hot) {

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when there is neither pressure, or a cold pressure would be below that of the air
     */
    public Calculation calculation() {
        if (cold.isEmpty() && hot.isEmpty()) {
            throw new ImpossibleSum("either a cold pressure or a wanted hot pressure is needed");
        }
        Calculation.Steps steps = Calculation.named("pressure", "Tyre pressure" + (where.isEmpty() ? "" : ", " + where))
                .from(cold)
                .from(hot)
                .from(coldTemperature, hotTemperature, ambient);
        TyrePressure tyre = new TyrePressure(ambient.si());
        cold.ifPresent(p -> {
            double found = tyre.atTemperature(p.si(), coldTemperature.si(), hotTemperature.si());
            steps.result(
                    "P_h",
                    "hot pressure",
                    found,
                    Unit.BAR,
                    "({p_c} + {p_a}) * ({T_h} + 273.15) / ({T_c} + 273.15) - {p_a}");
            steps.result("dp", "rise", found - p.si(), Unit.BAR, "{P_h} - {p_c}");
        });
        hot.ifPresent(p -> {
            double found = tyre.atTemperature(p.si(), hotTemperature.si(), coldTemperature.si());
            if (!(found > 0.0)) {
                throw new ImpossibleSum(
                        "a hot pressure of " + SumWords.plain(p) + " would mean a flat cold tyre; give a higher one");
            }
            steps.result(
                    "P_c",
                    "cold pressure to set for " + SumWords.plain(p) + " hot",
                    found,
                    Unit.BAR,
                    "({p_h} + {p_a}) * ({T_c} + 273.15) / ({T_h} + 273.15) - {p_a}");
        });
        return steps.note(
                        "Gauge pressures; temperatures of the air inside the tyre, which is not that of its tread. A moist"
                                + " filling rises more.")
                .caution(
                        "Pressures outside the tyre maker's limits can destroy a tyre at speed: those limits come first.")
                .source("ideal gas at constant volume, absolute pressures as absolute temperatures");
    }
}
