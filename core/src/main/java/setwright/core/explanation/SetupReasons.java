package setwright.core.explanation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupDifference;
import setwright.core.explanation.Reason.Figure;
import setwright.core.explanation.Reason.Kind;
import setwright.core.judgement.Finding;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;

/** What the setup says for a finding and against it. */
public final class SetupReasons {
    private static final int MOST_NAMED = 3;
    /** In the outer sixth of a range on either side. */
    private static final double NEAR_AN_END = 0.33;

    private SetupReasons() {}

    static Reason of(SetupStanding standing, Finding finding) {
        if (standing.isUnknown()) {
            return Reason.of(
                    Kind.SETUP,
                    standing.yard() == Yard.SCATTERED
                            ? "The setup says nothing: its items stand anywhere in the ranges of the car sheet, so that the middle of a"
                                    + " range is no more usual than its ends."
                            : "The setup says nothing: the car sheet gives no ranges to hold it against, or no lap could be replayed.");
        }
        Pool pool = finding.pool();
        double direction = finding.balance().direction();
        List<ItemStanding> with =
                standing.pushing(pool, direction).stream().limit(MOST_NAMED).toList();
        List<ItemStanding> against =
                standing.pushing(pool, -direction).stream().limit(1).toList();
        List<String> sentences = new ArrayList<>();
        if (with.isEmpty()) {
            sentences.add(
                    standing.yard() == Yard.BASELINE
                            ? standing.changed().isEmpty()
                                    ? "The setup is that of the baseline"
                                            + (finding.cause() == Finding.Cause.DRIVER
                                                    ? "."
                                                    : ": what differs stands on no sheet.")
                                    : standing.items().isEmpty()
                                            ? "What was changed on the setup since the baseline may make it so."
                                            : "Nothing that was changed on the setup since the baseline, as far as it can be"
                                                    + " replayed, makes it so."
                            : "Nothing on the setup that stands out of the ordinary makes it so.");
        } else {
            with.forEach(item -> sentences.add("The " + standsOut(standing.yard(), item, pool) + "."));
        }
        against.forEach(item -> sentences.add("Against it, the " + standsOut(standing.yard(), item, pool) + "."));
        untold(standing).ifPresent(sentences::add);
        return Reason.of(
                Kind.SETUP,
                String.join(" ", sentences),
                Stream.concat(with.stream(), against.stream())
                        .map(item ->
                                Figure.of(Words.item(item.item().name()), Math.toDegrees(item.balanceRad(pool)), "deg"))
                        .sorted(Comparator.comparingDouble(figure -> -Math.abs(figure.value())))
                        .toArray(Figure[]::new));
    }

    private static Optional<String> untold(SetupStanding standing) {
        List<SetupDifference> untold = standing.untold();
        return untold.isEmpty()
                ? Optional.empty()
                : Optional.of("Changed since the baseline without a replay that tells what it does: "
                        + Words.changes(untold) + ".");
    }

    private static String standsOut(Yard yard, ItemStanding standing, Pool pool) {
        SetupItem item = standing.item();
        double effect = standing.balanceRad(pool);
        String where = yard == Yard.BASELINE
                ? Words.plain(standing.usual()) + " in the baseline"
                : Math.abs(item.place()) > NEAR_AN_END
                        ? item.place() > 0.0 ? "near its top" : "near its bottom"
                        : item.place() > 0.0 ? "above its middle" : "below its middle";
        return Words.format(
                "%s stands at %s in a range of %s to %s%s, %s; on these laps that gives %s of %s",
                Words.item(item.name()),
                Words.plain(item.value()),
                Words.plain(item.min()),
                Words.plain(item.max()),
                item.unit().isBlank() ? "" : " " + item.unit(),
                where,
                Words.degrees(Math.abs(effect)),
                effect > 0.0 ? "understeer" : "oversteer");
    }
}
