package setwright.core.identification;

import java.util.List;
import setwright.core.recording.Channel;

/**
 * Data beside what the fitted car gives, to look at.
 *
 * @param title   what is shown
 * @param xWords  horizontal quantity with unit, in units people use
 * @param yWords  vertical quantity with unit
 * @param series  data and curves
 */
public record FitEvidence(String title, String xWords, String yWords, List<Series> series) {

    /**
     * Points or a curve.
     *
     * @param words   in the legend
     * @param curve   whether to join the points
     * @param x       horizontal values
     * @param y       vertical values, of equal length
     */
    public record Series(String words, boolean curve, Channel x, Channel y) {}

    public FitEvidence {
        series = List.copyOf(series);
    }
}
