package setwright.core.proposal;

import java.util.Locale;
import setwright.core.judgement.Finding;

/** Says what was looked at and why this change was taken: no more than was done. */
final class ChoiceWords {
    private ChoiceWords() {}

    /**
     * Returns it in one sentence, with a second one where it is little.
     *
     * @param turned    turns that were tried with few draws
     * @param replayed  of them, with all draws
     * @param alike     allowed ones that are worth as much as the best, the chosen one included
     * @param lapS      a usual lap, s
     */
    static String of(Candidate chosen, Finding target, int turned, int replayed, int alike, double lapS) {
        String looked = String.format(
                Locale.ROOT,
                "%d turns of items were tried in rough and the %d most promising replayed in full; ",
                turned,
                replayed);
        String taken = alike > 1
                ? String.format(
                        Locale.ROOT,
                        "%d of them are allowed and worth the same, and of those that take least to undo (%s) this is the"
                                + " smallest turn: ",
                        alike,
                        Undoing.of(chosen.turn().item()).words())
                : "of those that are allowed this is worth most: ";
        return looked
                + taken
                + String.format(
                        Locale.ROOT,
                        "%.2f s a lap, harm elsewhere taken off, and %+.2f deg of balance %s, the right way with a"
                                + " probability of %.2f.",
                        chosen.score(),
                        Math.toDegrees(chosen.target().central()),
                        target.phase().place(),
                        chosen.towardCure())
                + Slightness.warning(Math.abs(chosen.target().central()), chosen.score(), lapS)
                        .map(warning -> " " + warning)
                        .orElse("");
    }
}
