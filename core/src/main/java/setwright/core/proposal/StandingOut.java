package setwright.core.proposal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.car.setup.ItemRange;
import setwright.core.judgement.Finding;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;

/**
 * What the items that stand out would do, turned back, beside the change that was chosen. Who has just read that a bar makes the rear
 * loose, and is told to turn the wing, asks for the bar first.
 */
public final class StandingOut {
    /** More are in the table. */
    private static final int SHOWN = 2;

    private StandingOut() {}

    /**
     * Returns it in one sentence; empty where no item stands out that makes the problem, or none that does was weighed.
     *
     * @param chosen    the change
     * @param weighed   the others that are allowed
     * @param target    what it is to cure
     * @param standing  of the setup on these laps
     */
    public static Optional<String> words(
            Candidate chosen, List<Candidate> weighed, Finding target, SetupStanding standing) {
        List<ItemStanding> behind =
                standing.pushing(target.pool(), target.balance().direction());
        boolean since = standing.yard() == Yard.BASELINE;
        if (behind.stream().anyMatch(item -> takesBack(chosen.turn(), item))) {
            return Optional.of(
                    since
                            ? "It takes back what was changed since the baseline, or a part of it."
                            : "It takes back what stands out in the setup, or a part of it.");
        }
        String others = behind.stream()
                .flatMap(item -> weighed.stream().filter(other -> takesBack(other.turn(), item)))
                .limit(SHOWN)
                .map(StandingOut::words)
                .collect(Collectors.joining(" and "));
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "Of what %s, %s.",
                        since ? "was changed since the baseline" : "stands out in the setup",
                        others));
    }

    /** Tells whether a turn goes toward what is usual of an item, or toward the baseline. */
    static boolean takesBack(Turn turn, ItemStanding item) {
        return turn.item().name().equals(item.item().name())
                && (item.usual() - turn.item().value())
                                * (turn.to() - turn.item().value())
                        > 0.0;
    }

    private static String words(Candidate candidate) {
        return String.format(
                Locale.ROOT,
                "%s %s to %s would do %+.2f deg and %+.2f s a lap",
                candidate.turn().item().name(),
                ItemRange.plain(candidate.turn().item().value()),
                ItemRange.plain(candidate.turn().to()),
                Math.toDegrees(candidate.target().central()),
                candidate.prediction().lapTimeS().central());
    }
}
