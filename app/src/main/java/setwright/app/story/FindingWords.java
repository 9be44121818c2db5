package setwright.app.story;

import setwright.app.units.Figures;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding;

/** Short names for findings. */
public final class FindingWords {
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
        return price.isGain()
                ? quicker(price, figures) + " (" + figures.number(-price.high(), 2) + " to "
                        + figures.number(-price.low(), 2) + ")"
                : figures.seconds(price.seconds(), 2) + " a lap (" + figures.number(price.low(), 2) + " to "
                        + figures.number(price.high(), 2) + ")";
    }

    /** Returns what a finding costs, to be said after its name: {@code costs 0.31 s a lap}. */
    static String costs(Finding finding, Figures figures) {
        Finding.Price price = finding.price();
        return price.isGain()
                ? "shows, yet the laps are " + quicker(price, figures)
                : "costs " + figures.seconds(price.seconds(), 2) + " a lap";
    }

    /** Returns the same with its interval. */
    static String costsAbout(Finding finding, Figures figures) {
        return finding.price().isGain()
                ? "though the laps are " + price(finding, figures)
                : "costs " + price(finding, figures);
    }

    private static String quicker(Finding.Price price, Figures figures) {
        return figures.seconds(-price.seconds(), 2) + " quicker than in the baseline";
    }

    /** Returns what a gesture of the hands is, in one sentence. */
    public static String meaning(HandsEvent.Kind kind) {
        return switch (kind) {
            case HOLD -> "the wheel is held still while the corner still tightens";
            case CORRECTION -> "the wheel moves against the corner and back";
            case WIND_ON -> "more lock while the path does not tighten";
            case SAWING -> "more reversals than this driver needs elsewhere";
        };
    }
}
