package setwright.core.standing;

import java.util.EnumMap;
import java.util.Map;

/*
 * Design note. Whoever lays out the range of an adjustment mostly puts what is usual near its middle (common practice), and then an item
 * near an end of its range stands out. But a range may also be all that a part can do or a series allows, and then its middle means
 * nothing. The sheet itself tells which: in the first way most of its items stand near the middle. Three ways are weighed by Bayes by
 * where all items stand; in each an item is ordinary for that way, or out of the ordinary and anywhere (a spike and a slab). With two
 * dozen items the odds are far from even; with one or two the first way is believed. All constants are our choice; no publication was
 * found. Of nine sheets made by others six to nine tenths of the items lie within a tenth of the range about the middle.
 */

/** How the ranges of a sheet are laid out, as far as where its items stand tells. */
final class RangeLayout {
    /** Standard deviation of ordinary settings about the middle, as a share of the range. */
    private static final double ORDINARY = 0.08;
    /** Before it is looked at, one item in twelve is out of the ordinary: about two on a sheet of two dozen. */
    private static final double UNUSUAL = 1.0 / 12.0;

    /** A way of laying out ranges. */
    private enum Way {
        ABOUT_THE_USUAL(0.9, ORDINARY),
        LOOSELY(0.05, 2.5 * ORDINARY),
        ANYHOW(0.05, Double.POSITIVE_INFINITY);

        private final double before;
        private final double deviation;

        Way(double before, double deviation) {
            this.before = before;
            this.deviation = deviation;
        }

        /** Density of where an item stands, per range. */
        private double density(double place) {
            if (Double.isInfinite(deviation)) {
                return 1.0;
            }
            double away = place / deviation;
            double ordinary = Math.exp(-0.5 * away * away) / (deviation * Math.sqrt(2.0 * Math.PI));
            return UNUSUAL + (1.0 - UNUSUAL) * ordinary;
        }
    }

    private final Map<Way, Double> odds;

    private RangeLayout(Map<Way, Double> odds) {
        this.odds = odds;
    }

    /**
     * Weighs the ways.
     *
     * @param places  where each item stands in its range, -0.5..0.5
     */
    static RangeLayout of(double... places) {
        Map<Way, Double> odds = new EnumMap<>(Way.class);
        for (Way way : Way.values()) {
            odds.put(way, way.before);
        }
        for (double place : places) {
            odds.replaceAll((way, before) -> before * way.density(place));
            double sum = odds.values().stream().mapToDouble(Double::doubleValue).sum();
            odds.replaceAll((way, after) -> after / sum);
        }
        return new RangeLayout(odds);
    }

    /** Tells whether the middle of a range means anything; of no items it is believed. */
    boolean tells() {
        return odds.getOrDefault(Way.ABOUT_THE_USUAL, 0.0) >= 0.5;
    }

    /** Returns the probability that an item is out of the ordinary, 0..1. */
    double unusual(double place) {
        return odds.entrySet().stream()
                .mapToDouble(
                        entry -> entry.getValue() * UNUSUAL / entry.getKey().density(place))
                .sum();
    }
}
