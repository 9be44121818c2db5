package setwright.app.report.change;

import java.util.Optional;
import setwright.app.plot.Markup;
import setwright.app.report.IntervalBar;
import setwright.app.report.Shade;
import setwright.app.report.change.PredictionView.EffectCell;
import setwright.app.story.PredictionWords;
import setwright.app.units.Figures;
import setwright.core.replay.Effect;

/**
 * Effects as cells of a table: colour and sign for the direction, pale where the sign is not sure.
 *
 * @param figures       as people read them
 * @param yardstickRad  what one typical change does to the balance: strong colours are several of it
 * @param spanRad       drawings of balance reach from minus this to plus this
 * @param spanS         drawings of time do
 */
record EffectCells(Figures figures, double yardstickRad, double spanRad, double spanS) {

    EffectCell none(String what) {
        return new EffectCell("\u2013", "", "", "none", new Markup(""), what + ": hardly any cornering");
    }

    EffectCell balance(String what, Optional<Effect> found, String now) {
        if (found.isEmpty() || !Double.isFinite(found.get().central())) {
            return none(what);
        }
        Effect effect = found.get();
        String value = figures.signed(Math.toDegrees(effect.central()), 2);
        String range = figures.signed(Math.toDegrees(effect.low()), 2) + " to "
                + figures.signed(Math.toDegrees(effect.high()), 2);
        Shade shade = Shade.of(effect.central(), yardstickRad, !effect.signSure());
        String direction = effect.central() < 0.0 ? "toward oversteer" : "toward understeer";
        return new EffectCell(
                value,
                range,
                now,
                shade.css(),
                IntervalBar.of(effect.low(), effect.high(), effect.central(), spanRad),
                what + ": " + direction + ", " + value + " deg, range " + range + ", " + sure(effect));
    }

    EffectCell time(String what, Effect effect) {
        String value = figures.signed(effect.central(), 3);
        String range = figures.signed(effect.low(), 3) + " to " + figures.signed(effect.high(), 3);
        return new EffectCell(
                value,
                range,
                "",
                effect.signSure() ? "time" : "time pale",
                IntervalBar.of(effect.low(), effect.high(), effect.central(), spanS),
                what + ": " + value + " s, range " + range + ", " + sure(effect));
    }

    private String sure(Effect effect) {
        return "sign " + figures.sureness(effect.probabilityOfSign()) + " sure"
                + (effect.signSure() ? "" : ": " + PredictionWords.OPEN);
    }
}
