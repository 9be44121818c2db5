package setwright.core.proposal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SmallestEffect;
import setwright.core.replay.Effect;

/**
 * What the next stint should show.
 *
 * @param sentences   what to look for and what would refute the change
 * @param laps        laps a side until the change of balance can be told from chance, {@value #MOST_LAPS} at most
 * @param refutation  what so many laps would have to show to refute it; empty where the driver's scatter is not known
 */
record Expectation(List<String> sentences, int laps, Optional<Refutation> refutation) {
    private static final int FEWEST_LAPS = 3;
    private static final int MOST_LAPS = 30;

    static Expectation of(Candidate chosen, Finding target, Diagnosis diagnosis) {
        return of(
                chosen,
                target,
                Math.max(2, diagnosis.stint().goodLaps().size()),
                diagnosis.repeatability().smallestBalanceRad());
    }

    /**
     * Returns it for a driver.
     *
     * @param driven       good laps of his, &gt;= 2
     * @param smallestRad  change of balance that as many laps a side could tell from chance, rad
     */
    static Expectation of(Candidate chosen, Finding target, int driven, double smallestRad) {
        double scatter = smallestRad / SmallestEffect.inDeviations(driven);
        double moved = Math.abs(chosen.target().central());
        int laps = FEWEST_LAPS;
        while (laps < MOST_LAPS && SmallestEffect.inDeviations(laps) * scatter > moved) {
            laps++;
        }
        String way = target.balance() == BalanceSign.OVERSTEER ? "toward understeer" : "toward oversteer";
        String seen = laps == MOST_LAPS
                ? String.format(
                        Locale.ROOT,
                        "With this scatter so small a change can't be told from chance in %d laps: judge it by the driver's"
                                + " words and by lap time over several runs.",
                        MOST_LAPS)
                : String.format(Locale.ROOT, "It takes %d laps a side to see that with this driver's scatter.", laps);
        Effect wanted = chosen.target().times(Math.signum(chosen.target().central()) * Math.toDegrees(1.0));
        Optional<Refutation> refutation = Refutation.of(chosen.target(), scatter, laps);
        return new Expectation(
                List.of(
                        String.format(
                                Locale.ROOT,
                                "If it is right, the balance %s of these corners moves by %.2f deg %s (8 in 10: %.2f to %.2f).",
                                target.phase().place(),
                                wanted.central(),
                                way,
                                wanted.low(),
                                wanted.high()),
                        seen,
                        refuted(refutation, chosen.target().central())),
                laps,
                refutation);
    }

    /** What is foreseen may lie the other way by a little: then only more than that refutes it. */
    private static String refuted(Optional<Refutation> refutation, double wantedRad) {
        String elsewhere = " or when another phase gets worse by as much as this gets better; then turn it back.";
        return refutation
                .map(found -> {
                    double least = Math.toDegrees(wantedRad < 0.0 ? -found.aboveRad() : found.belowRad());
                    double most = Math.toDegrees(wantedRad < 0.0 ? -found.belowRad() : found.aboveRad());
                    return String.format(
                                    Locale.ROOT,
                                    "It is refuted when over %d laps a side the balance there moves by %s than %.2f deg %s or by"
                                            + " more than %.2f deg that way, outside what is foreseen and what so many laps"
                                            + " leave open,",
                                    found.laps(),
                                    least < 0.0 ? "more" : "less",
                                    Math.abs(least),
                                    least < 0.0 ? "the other way" : "that way",
                                    most)
                            + elsewhere;
                })
                .orElse("It is refuted when the balance there does not move that way," + elsewhere);
    }
}
