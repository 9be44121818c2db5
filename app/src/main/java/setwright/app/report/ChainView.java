package setwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import setwright.app.story.FindingWords;
import setwright.app.units.Figures;
import setwright.core.car.SetupItem;
import setwright.core.explanation.Alternative;
import setwright.core.explanation.Explainer;
import setwright.core.explanation.Explanation;
import setwright.core.explanation.Reason;
import setwright.core.explanation.VerdictExplainer;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;

/**
 * The chain of reasons of one finding, or of a verdict that rests on none.
 *
 * @param rank    of the finding, from 1; 0 for a verdict
 * @param title   of the chain
 * @param links   in order
 * @param items   setup items out of the ordinary, the one that does most first
 * @param place   where the items' effect is meant
 * @param others  what else it could be, the likeliest first
 */
public record ChainView(int rank, String title, List<Link> links, List<Item> items, String place, List<Other> others) {
    /** Items that do less than the last digit that is shown say nothing. */
    private static final double LEAST_RAD = Math.toRadians(0.005);
    /** Those that do less than a third of what is worth a change are not coloured. */
    private static final double COLOURED_RAD = Math.toRadians(0.05);

    /**
     * One reason.
     *
     * @param label   what it speaks of
     * @param lap     lap that shows it; 0 for none
     * @param corner  corner where to look; 0 for none
     */
    public record Link(String label, String sentence, int lap, int corner) {}

    /**
     * One setup item.
     *
     * @param percent  where it stands in its range, 0..100
     * @param css      style class of what it does
     */
    public record Item(String name, String value, String low, String high, int percent, String effect, String css) {}

    /** Another answer. */
    public record Other(String what, String probability, int percent, String why) {}

    static List<ChainView> of(Diagnosis diagnosis, Figures figures) {
        List<ChainView> chains = new ArrayList<>();
        List<Reason> verdict = VerdictExplainer.explain(diagnosis);
        if (!verdict.isEmpty()) {
            chains.add(new ChainView(
                    0, "Why the answer is: " + diagnosis.verdict().words(), links(verdict), List.of(), "", List.of()));
        }
        IntStream.range(0, diagnosis.findings().size())
                .mapToObj(i -> of(diagnosis, i, figures))
                .forEach(chains::add);
        return chains;
    }

    private static ChainView of(Diagnosis diagnosis, int index, Figures figures) {
        Finding finding = diagnosis.findings().get(index);
        Explanation explanation = Explainer.explain(diagnosis, finding);
        Pool pool = finding.pool();
        return new ChainView(
                index + 1,
                "Why it is " + FindingWords.name(finding),
                links(explanation.reasons()),
                diagnosis.grounds().standing().unusual(pool).stream()
                        .filter(item -> Math.abs(item.balanceRad(pool)) >= LEAST_RAD)
                        .map(item -> item(item, pool, figures))
                        .toList(),
                FindingWords.name(finding).replaceFirst(" (under|over)steer", ""),
                explanation.alternatives().stream()
                        .map(other -> other(other, figures))
                        .toList());
    }

    private static List<Link> links(List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> new Link(
                        label(reason.kind()),
                        reason.sentence(),
                        reason.proof().map(Reason.Proof::lap).orElse(0),
                        reason.proof().map(Reason.Proof::corner).orElse(0)))
                .toList();
    }

    private static String label(Reason.Kind kind) {
        return switch (kind) {
            case LAPS -> "Which laps";
            case CORNERS -> "Which corners";
            case TRIGGER -> "What sets it off";
            case AXLE -> "Which axle";
            case SETUP -> "The setup";
            case DRIVING -> "The driving";
            case PRICE -> "What it costs";
            case CERTAINTY -> "How sure";
            case LOOKED_AT -> "What was looked at";
            case MOST_SEEN -> "The most seen";
            case WHY_NOT -> "Why that is no reason";
            case TO_SETTLE -> "What would settle it";
        };
    }

    private static Item item(ItemStanding standing, Pool pool, Figures figures) {
        double effect = standing.balanceRad(pool);
        SetupItem item = standing.item();
        return new Item(
                item.name().replace('_', ' '),
                figures.plain(item.value()) + (item.unit().isBlank() ? "" : " " + item.unit()),
                figures.plain(item.min()),
                figures.plain(item.max()),
                (int) Math.round(100.0 * Math.min(1.0, Math.max(0.0, 0.5 + item.place()))),
                figures.signed(Math.toDegrees(effect), 2) + " deg",
                Math.abs(effect) < COLOURED_RAD ? "" : effect > 0.0 ? "push2" : "slide2");
    }

    private static Other other(Alternative other, Figures figures) {
        double p = other.probability().orElse(Double.NaN);
        return new Other(
                Figures.capital(other.what()),
                Double.isFinite(p) ? figures.probability(p) : "not known",
                Double.isFinite(p) ? (int) Math.round(100.0 * p) : 0,
                other.why());
    }
}
