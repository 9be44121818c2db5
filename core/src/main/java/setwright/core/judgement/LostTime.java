package setwright.core.judgement;

import java.util.Locale;

/*
 * Design note. A driver holds back what he cannot use: a car that has become loose may show the balance that it showed in good order, in
 * slower laps. So the same balance in clearly slower laps is no proof of the same car. Nor is the time a proof of a fault: tyres, fuel and
 * track differ from run to run. It only asks for a run back to back.
 */

/**
 * By how much laps are clearly slower than those of the baseline.
 *
 * @param seconds  a lap, s, above zero beyond chance and worth a word
 * @param lowS     lower end of its 95 % interval, s
 * @param highS    upper end, s
 */
public record LostTime(double seconds, double lowS, double highS) {
    /** Returns it as {@code 0.52 s slower (0.31 to 0.73)}. */
    String words() {
        return String.format(Locale.ROOT, "%.2f s slower (%.2f to %.2f)", seconds, lowS, highS);
    }
}
