package setwright.app.report;

import java.util.ArrayList;
import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.plot.Scale;
import setwright.app.plot.Svg;
import setwright.app.story.FindingWords;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;

/**
 * What the pattern link shows: findings, most costly first.
 *
 * @param link   the argument
 * @param cards  by rank
 */
public record PatternView(Story.Link link, List<Card> cards) {

    /**
     * One finding.
     *
     * @param rank         from 1
     * @param name         what and where
     * @param css          style class of its colour
     * @param sign         of the imbalance
     * @param price        with interval, in s a lap
     * @param priceBar     drawn on the scale that all cards share
     * @param corners      numbers
     * @param facts        label and value
     * @param caveat       when it is no reason to change the car; else empty
     */
    public record Card(
            int rank,
            String name,
            String css,
            String sign,
            String price,
            Markup priceBar,
            List<Integer> corners,
            List<Fact> facts,
            String caveat) {}

    /** A label and its value. */
    public record Fact(String label, String value) {}

    static PatternView of(List<Finding> findings, Story.Link link, Figures figures) {
        double top = findings.stream()
                .flatMap(f -> List.of(f.price().seconds(), f.price().high()).stream())
                .filter(Double::isFinite)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0.0);
        double bottom = findings.stream()
                .mapToDouble(f -> f.price().low())
                .filter(Double::isFinite)
                .min()
                .orElse(0.0);
        Scale x = new Scale(Math.min(0.0, 1.1 * bottom), Math.max(0.1, 1.1 * top), 0.0, 1.0);
        List<Card> cards = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            cards.add(card(i + 1, findings.get(i), x, figures));
        }
        return new PatternView(link, cards);
    }

    private static Card card(int rank, Finding finding, Scale x, Figures figures) {
        boolean slide = finding.balance() == BalanceSign.OVERSTEER;
        String name = FindingWords.name(finding);
        return new Card(
                rank,
                Figures.capital(name),
                slide ? "slide2" : "push2",
                slide ? "\u2212" : "+",
                FindingWords.price(finding, figures),
                bar(finding.price(), x, figures),
                finding.corners(),
                List.of(
                        new Fact("Share of laps", figures.percent(finding.lapShare())),
                        new Fact("Probability that it is real", figures.probability(finding.probability())),
                        new Fact(
                                "Size",
                                figures.degreesSize(finding.sizeRad()) + " ("
                                        + figures.number(Math.toDegrees(finding.sizeLowRad()), 2) + " to "
                                        + figures.number(Math.toDegrees(finding.sizeHighRad()), 2) + ")"),
                        new Fact("Begins", finding.trigger().begins()),
                        new Fact("Made by", "the " + finding.cause().words())),
                finding.lapWide() ? "" : "Does not hold round the lap: alone, no reason to change the car.");
    }

    private static Markup bar(Finding.Price price, Scale x, Figures figures) {
        if (!Double.isFinite(price.seconds()) || !Double.isFinite(price.low()) || !Double.isFinite(price.high())) {
            return new Markup("");
        }
        String zero = Svg.percent(x.at(0.0));
        double low = x.within(price.low());
        double high = x.within(price.high());
        // the longer side says how long it is; both ticks beside each other could not be read
        double end = (-x.low() > x.high() ? x.low() : x.high()) / 1.1;
        return new Svg()
                .open("svg", "class", "interval price-bar", "width", "100%", "height", "30", "aria-hidden", "true")
                .add("line", "class", "zero", "x1", zero, "x2", zero, "y1", "0", "y2", "16")
                .add("rect", "x", Svg.percent(low), "width", Svg.percent(high - low), "y", "6", "height", "4")
                .add("circle", "cx", Svg.percent(x.within(price.seconds())), "cy", "8", "r", "5")
                .text("text", "0", "class", "tick middle", "x", zero, "y", "28")
                .text(
                        "text",
                        figures.number(end, 2) + " s",
                        "class",
                        "tick middle",
                        "x",
                        Svg.percent(x.at(end)),
                        "y",
                        "28")
                .close()
                .markup();
    }
}
