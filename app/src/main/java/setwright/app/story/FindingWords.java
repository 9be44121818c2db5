package setwright.app.story;

import setwright.app.units.Figures;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding;

/** Short names for findings. */
public final class FindingWords {
    private static final String NO_LOSS = "no time that shows";

    private FindingWords() {}

    /** Returns what is wrong and where: {@code entry oversteer in the slower corners}. */
    public static String name(Finding finding) {
        String where = switch (finding.speed()) {
            case ALL -> "at all speeds";
            case LOW -> "in the slower corners";
            case HIGH -> "in the faster corners";
        };
        return (finding.phase() == Phase.MID ? "mid-corner" : finding.phase().words()) + " "
                + finding.balance().words() + " " + where;
    }

    /** Returns the price of a finding with its interval. */
    public static String price(Finding finding, Figures figures) {
        Finding.Price price = finding.price();
        if (!Double.isFinite(price.seconds())) {
            return "price unknown";
        }
        if (price.isGain()) {
            return quicker(price, figures) + " (" + interval(-price.high(), -price.low(), figures) + ")";
        }
        return (price.isNoLoss() ? NO_LOSS : figures.seconds(price.seconds(), 2) + " a lap") + " ("
                + interval(price.low(), price.high(), figures) + ")";
    }

    /** Returns what a finding costs, without its interval: {@code 0.31 s}. */
    public static String brief(Finding finding, Figures figures) {
        Finding.Price price = finding.price();
        return price.isGain()
                ? figures.seconds(-price.seconds(), 2) + " quicker"
                : price.isNoLoss() ? "none shows" : figures.seconds(price.seconds(), 2);
    }

    /** Returns what a finding costs, to be said after its name: {@code costs 0.31 s a lap}. */
    static String costs(Finding finding, Figures figures) {
        Finding.Price price = finding.price();
        if (price.isGain()) {
            return "shows, yet the laps are " + quicker(price, figures) + ": try it back to back only";
        }
        return "costs " + (price.isNoLoss() ? NO_LOSS : figures.seconds(price.seconds(), 2) + " a lap");
    }

    /** Returns the same with its interval. */
    static String costsAbout(Finding finding, Figures figures) {
        if (!Double.isFinite(finding.price().seconds())) {
            return price(finding, figures);
        }
        return (finding.price().isGain() ? "though the laps are " : "costs ") + price(finding, figures);
    }

    private static String interval(double low, double high, Figures figures) {
        return figures.number(low, 2) + " to " + figures.number(high, 2);
    }

    private static String quicker(Finding.Price price, Figures figures) {
        return figures.seconds(-price.seconds(), 2) + " quicker than in the baseline";
    }

    /** Returns what a gesture of the hands is, in one sentence. */
    public static String meaning(HandsEvent.Kind kind) {
        return switch (kind) {
            case HOLD -> "the wheel is held still while the corner still tightens, with the rear near its peak";
            case CORRECTION -> "the wheel moves against the corner and back";
            case WIND_ON -> "more lock while the path does not tighten, with the front near its peak";
            case SAWING -> "more reversals than this driver needs elsewhere";
        };
    }
}
