package setwright.app.report;

import setwright.app.evidence.BalanceTable.Cell;

/**
 * How an imbalance is drawn: sign and size in steps, pale when these laps do not show it beyond chance.
 *
 * <p>Steps are multiples of what one typical setup change does, so that a strong colour means several changes' worth.
 *
 * @param step   -3 strong oversteer .. 0 neutral .. 3 strong understeer
 * @param pale   weak evidence
 */
public record Shade(int step, boolean pale) {
    private static final double[] EDGES = {0.5, 1.5, 3.0};

    /** Returns the shade of a cell compared with a yardstick in rad. */
    static Shade of(Cell cell, double yardstickRad) {
        return new Shade(step(cell.excess().median(), yardstickRad), !cell.evident());
    }

    /** Returns the shade of an imbalance, or of a change of it, compared with a yardstick, both in rad. */
    public static Shade of(double excessRad, double yardstickRad, boolean pale) {
        return new Shade(step(excessRad, yardstickRad), pale);
    }

    static int step(double excessRad, double yardstickRad) {
        double size = Math.abs(excessRad) / yardstickRad;
        int step = 0;
        for (double edge : EDGES) {
            if (size >= edge) {
                step++;
            }
        }
        return excessRad < 0.0 ? -step : step;
    }

    /** Sizes in rad at which the next step begins. */
    static double edgeRad(int step, double yardstickRad) {
        return EDGES[step - 1] * yardstickRad;
    }

    /** Returns the names of its style classes. */
    public String css() {
        String colour = step == 0 ? "even" : (step > 0 ? "push" : "slide") + Math.abs(step);
        return pale ? colour + " pale" : colour;
    }

    /** Returns the word for the sign. */
    String words() {
        return step == 0 ? "even" : step > 0 ? "understeer" : "oversteer";
    }

    /** Returns the sign alone; empty when neutral. */
    String sign() {
        return step == 0 ? "" : step > 0 ? "+" : "\u2212";
    }
}
