package setwright.core.proposal;

import java.util.List;
import java.util.Locale;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SmallestEffect;
import setwright.core.replay.Effect;

/**
 * What the next stint should show.
 *
 * @param sentences  what to look for and what would refute the change
 * @param laps       laps a side until the change of balance can be told from chance, {@value #MOST_LAPS} at most
 */
record Expectation(List<String> sentences, int laps) {
    private static final int FEWEST_LAPS = 3;
    private static final int MOST_LAPS = 30;

    static Expectation of(Candidate chosen, Finding target, Diagnosis diagnosis) {
        int driven = Math.max(2, diagnosis.stint().goodLaps().size());
        double scatter = diagnosis.repeatability().smallestBalanceRad() / SmallestEffect.inDeviations(driven);
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
                        "It is refuted when the balance there does not move that way, or when another phase gets worse by as"
                                + " much; then turn it back."),
                laps);
    }
}
