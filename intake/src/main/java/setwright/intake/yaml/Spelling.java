package setwright.intake.yaml;

import java.util.Collection;
import java.util.Optional;

/** Suggests the word that was probably meant. */
public final class Spelling {
    private Spelling() {}

    /**
     * Returns the nearest known word, when it is near enough to be a slip (a third of its letters at most).
     *
     * <p><b>Source:</b> edit distance of V. I. Levenshtein, 1966.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String candidate : known) {
            int distance = distance(word, candidate);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return least <= Math.max(1, best.length() / 3) ? Optional.of(best) : Optional.empty();
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substitute = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(substitute, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
