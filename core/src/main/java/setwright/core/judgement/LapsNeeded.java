package setwright.core.judgement;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;

/*
 * Design note. What if the next laps went as those so far? For slides the counts at each corner are scaled up and the same
 * sums are done again; the factor that the belief about the car contributes stays. A level is not told apart by more laps:
 * its doubt is what a healthy car shows, and that is the same on every lap.
 */

/** How many laps like these would make a suspicion a finding. */
public final class LapsNeeded {
    /**
     * Fewer say nothing of the car. What shows in every one of n laps, though it comes in no more than every other one, has a
     * probability of 0.5 to the power of n (sign test): only from five on that is below 0.05.
     */
    public static final int FEWEST = 5;

    /** So many are good to have: a lap put aside, or one in which it does not show, then does no harm (common practice). */
    public static final int GOOD = 8;

    /** Nobody is sent out for more in one day's testing (our choice). */
    private static final int MOST = 40;

    private LapsNeeded() {}

    /**
     * Returns how many more laps like these a verdict of "not enough evidence" waits for.
     *
     * @return empty for another verdict, and where laps alone will not bring one
     */
    public static OptionalInt forVerdict(Diagnosis diagnosis) {
        int laps = diagnosis.stint().goodLaps().size();
        if (diagnosis.verdict() != Verdict.NOT_ENOUGH_EVIDENCE
                || diagnosis.trace().steering().contradicts()) {
            return OptionalInt.empty();
        }
        if (laps < FEWEST) {
            return OptionalInt.of(FEWEST - laps);
        }
        return diagnosis.grounds().considered().stream()
                .filter(Finding::lapWide)
                .findFirst()
                .map(finding -> toSettle(diagnosis, finding))
                .orElse(OptionalInt.empty());
    }

    /**
     * Returns how many more laps would do.
     *
     * @param finding  considered, but not sure enough
     * @return empty where no number of laps up to forty would
     */
    public static OptionalInt toSettle(Diagnosis diagnosis, Finding finding) {
        int laps = diagnosis.stint().goodLaps().size();
        if (laps == 0 || diagnosis.grounds().isLevel(finding)) {
            return OptionalInt.empty();
        }
        Map<Integer, List<PassEvidence>> byCorner = PassEvidence.of(diagnosis, finding).stream()
                .collect(
                        Collectors.groupingBy(evidence -> evidence.pass().corner(), TreeMap::new, Collectors.toList()));
        double now = probability(byCorner, 1.0);
        if (now <= 0.0) {
            return OptionalInt.empty();
        }
        double rest = finding.probability() / now;
        for (int more = 1; more <= MOST; more++) {
            double scale = (laps + more) / (double) laps;
            if (rest * probability(byCorner, scale) >= Certainty.least(finding, diagnosis)) {
                return OptionalInt.of(more);
            }
        }
        return OptionalInt.empty();
    }

    private static double probability(Map<Integer, List<PassEvidence>> byCorner, double scale) {
        List<Shares.Count> counts = byCorner.entrySet().stream()
                .map(entry -> new Shares.Count(
                        entry.getKey(),
                        (int) Math.round(scale
                                * entry.getValue().stream()
                                        .filter(PassEvidence::shows)
                                        .count()),
                        (int) Math.round(scale * entry.getValue().size())))
                .toList();
        double pooled = Shares.pooled(counts);
        double[] mostly = counts.stream()
                .mapToDouble(count -> Shares.mostly(count, pooled))
                .toArray();
        return mostly.length == 1 ? mostly[0] : Shares.atLeastTwo(mostly);
    }
}
