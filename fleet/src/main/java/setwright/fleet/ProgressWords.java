package setwright.fleet;

import java.util.Locale;
import java.util.function.Consumer;

/** Says now and then how far a run has come. */
final class ProgressWords {
    private static final double EVERY_S = 10.0;

    private final int all;
    private final Consumer<String> told;
    private final long began = System.nanoTime();
    private double lastS;

    ProgressWords(int all, Consumer<String> told) {
        this.all = all;
        this.told = told;
    }

    /** So many recordings are judged. */
    synchronized void finished(int recordings) {
        double nowS = 1.0e-9 * (System.nanoTime() - began);
        if (recordings < all && nowS - lastS < EVERY_S) {
            return;
        }
        lastS = nowS;
        told.accept(
                recordings < all
                        ? String.format(
                                Locale.ROOT,
                                "%d of %d recordings, %.1f a second, about %.0f s to go.",
                                recordings,
                                all,
                                recordings / nowS,
                                (all - recordings) * nowS / recordings)
                        : String.format(Locale.ROOT, "%d of %d recordings.", recordings, all));
    }
}
