package setwright.intake.gather;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.hipparchus.distribution.continuous.FDistribution;
import setwright.core.numerics.Lag;
import setwright.core.recording.Quantity;
import setwright.intake.problem.InputProblem;

/**
 * By how much the clock of one table must be put forward to agree with another's, from a motion that both saw.
 *
 * <p>Laps are alike, so that a lap too many fits nearly as well. The share of variance that is left unexplained must therefore be smaller than
 * at any other place by more than chance allows: an F test of the two shares, with as many samples as the signal has independent ones (its length over
 * the time in which its autocorrelation falls to a half, twice; common practice).
 *
 * @param offsetS      to be added to the times of the second, s
 * @param correlation  of the two there
 * @param commonS      how long both saw it, s
 * @param quantity     what they saw
 */
record ClockMatch(double offsetS, double correlation, double commonS, Quantity quantity) {
    private static final double COARSE_HZ = 2.0;
    private static final double FINE_HZ = 20.0;
    /** Shorter, and one corner looks like another. */
    private static final double SHORTEST_COMMON_S = 20.0;
    /** Two devices that saw the same motion agree on nine tenths of its variance, noise and lag of both included. */
    private static final double FITTING = 0.9;
    /** Clocks of one system may differ by this much, and are not put into question without need. */
    private static final double SAME_CLOCK_S = 3.0;
    /** Places nearer to the best than this belong to its own peak. */
    private static final double PEAK_S = 5.0;

    private static final double LEVEL = 0.99;
    /** Two clocks that can differ by more are an hour and more of driving each; the search grows with the square. */
    private static final int MOST_SAMPLES = 40_000;

    /**
     * Finds the offset.
     *
     * @throws InputProblem when two places fit alike, or none fits
     */
    static Optional<ClockMatch> find(TimedTable first, TimedTable second) {
        for (Quantity quantity : Witness.TELLING) {
            Optional<double[]> one = Witness.of(first, quantity);
            Optional<double[]> other = Witness.of(second, quantity);
            if (one.isPresent() && other.isPresent()) {
                return Optional.of(match(first, one.get(), second, other.get(), quantity));
            }
        }
        return Optional.empty();
    }

    private static ClockMatch match(
            TimedTable first, double[] one, TimedTable second, double[] other, Quantity quantity) {
        double seconds = Math.max(first.lastS() - first.firstS(), second.lastS() - second.firstS());
        double rate = Math.min(COARSE_HZ, MOST_SAMPLES / Math.max(1.0, seconds));
        int size = (int) Math.ceil(seconds * rate) + 1;
        double[] a = onGrid(first, one, first.firstS(), rate, size);
        double[] b = onGrid(second, other, second.firstS(), rate, size);
        // Signal b at sample i + k is compared with signal a at sample i: the second began k samples before the first.
        double[] profile = Lag.profile(a, b, size - 1);
        double shortest = Math.max(SHORTEST_COMMON_S, 0.5 * shorterS(first, second));
        Places places = new Places(profile, known(a), known(b), rate, shortest * rate, quantity);
        Place best = places.best(atS -> true);
        // On clocks that agree the second begins this long after the first.
        double asTheyStandS = second.firstS() - first.firstS();
        Place asTheyStand = places.best(atS -> Math.abs(atS - asTheyStandS) <= SAME_CLOCK_S);
        double independent = shorterS(first, second) / independentS(a, rate);
        double freedom = Math.max(2.0, independent - 1.0);
        double chance = new FDistribution(freedom, freedom).inverseCumulativeProbability(LEVEL);
        boolean stands = asTheyStand.unexplained() <= chance * best.unexplained() && asTheyStand.agreement() >= FITTING;
        Place chosen = stands ? asTheyStand : best;
        if (chosen.agreement() < FITTING) {
            throw unlike(first, second, quantity, chosen);
        }
        Place rival = places.best(atS -> Math.abs(atS - chosen.atS()) > PEAK_S);
        if (!stands && rival.agreement() > 0.0 && rival.unexplained() <= chance * chosen.unexplained()) {
            throw ambiguous(first, second, quantity, chosen, rival);
        }
        return refined(first, one, second, other, chosen, quantity);
    }

    /**
     * A place where the two may fit.
     *
     * @param atS        where the second begins, s after the first began
     * @param agreement  correlation there
     */
    private record Place(double atS, double agreement) {
        /** Share of the variance that is left. */
        double unexplained() {
            return 1.0 - agreement * agreement;
        }
    }

    /** All places where the two lie over each other for long enough. */
    private static final class Places {
        /** Correlation at every shift of the second, from the most negative. */
        private final double[] profile;
        /** One more than the last sample that is known. */
        private final int knownOfFirst;

        private final int knownOfSecond;
        private final double rate;
        /** Samples that both must have. */
        private final double fewest;

        private final Quantity quantity;

        Places(double[] profile, int knownOfFirst, int knownOfSecond, double rate, double fewest, Quantity quantity) {
            this.profile = profile;
            this.knownOfFirst = knownOfFirst;
            this.knownOfSecond = knownOfSecond;
            this.rate = rate;
            this.fewest = fewest;
            this.quantity = quantity;
        }

        Place best(DoublePredicate where) {
            Place best = new Place(Double.NaN, -1.0);
            int most = profile.length / 2;
            for (int k = -most; k <= most; k++) {
                double atS = -k / rate;
                // What turns the other way round in one of the files still tells the time.
                double agreement = quantity == Quantity.SPEED ? profile[k + most] : Math.abs(profile[k + most]);
                if (common(k) >= fewest && agreement > best.agreement() && where.test(atS)) {
                    best = new Place(atS, agreement);
                }
            }
            return best;
        }

        /** How many samples both can have at a shift; their gaps are not counted. */
        private int common(int k) {
            return Math.min(knownOfFirst, knownOfSecond - k) - Math.max(0, -k);
        }
    }

    private static InputProblem ambiguous(
            TimedTable first, TimedTable second, Quantity quantity, Place chosen, Place rival) {
        return InputProblem.in(second.table().file())
                .expected("one time at which it fits to " + first.table().file() + " by their " + quantity.words())
                .found(String.format(
                        Locale.ROOT,
                        "two: beginning %+.1f s and %+.1f s after it (correlation %.4f and %.4f)",
                        chosen.atS(),
                        rival.atS(),
                        chosen.agreement(),
                        rival.agreement()))
                .advice("Laps are alike: give both files with the out lap and the in lap, or on one clock.")
                .problem();
    }

    private static InputProblem unlike(TimedTable first, TimedTable second, Quantity quantity, Place best) {
        return InputProblem.in(second.table().file())
                .expected("the same run as " + first.table().file())
                .found(String.format(
                        Locale.ROOT,
                        "a %s that is nowhere like it (correlation %.2f at best)",
                        quantity.words(),
                        Math.max(0.0, best.agreement())))
                .advice("Give files that were recorded in one run.")
                .problem();
    }

    /** One more than the last sample that is known. */
    private static int known(double[] signal) {
        int end = signal.length;
        while (end > 0 && Double.isNaN(signal[end - 1])) {
            end--;
        }
        return end;
    }

    private static double shorterS(TimedTable first, TimedTable second) {
        return Math.min(first.lastS() - first.firstS(), second.lastS() - second.firstS());
    }

    /** Twice the time in which the autocorrelation falls to a half. */
    private static double independentS(double[] signal, double rate) {
        int most = Math.min(signal.length - 1, (int) Math.ceil(60.0 * rate));
        double[] profile = Lag.profile(signal, signal, most);
        int k = 0;
        while (k < most && profile[most + k] > 0.5) {
            k++;
        }
        return 2.0 * Math.max(1, k) / rate;
    }

    private static double[] onGrid(TimedTable table, double[] values, double fromS, double rate, int size) {
        double[] grid = new double[size];
        Arrays.setAll(grid, i -> fromS + i / rate);
        return OntoTimes.measure(values, table, grid);
    }

    private static ClockMatch refined(
            TimedTable first, double[] one, TimedTable second, double[] other, Place place, Quantity quantity) {
        double offset = first.firstS() + place.atS() - second.firstS();
        double from = Math.max(first.firstS(), second.firstS() + offset);
        double to = Math.min(first.lastS(), second.lastS() + offset);
        int size = (int) Math.floor((to - from) * FINE_HZ) + 1;
        double[] a = onGrid(first, one, from, FINE_HZ, size);
        double[] b = onGrid(second, other, from - offset, FINE_HZ, size);
        Lag lag = Lag.between(a, b, 1.0 / FINE_HZ, 1.5 / COARSE_HZ);
        return new ClockMatch(offset - lag.seconds(), lag.correlation(), to - from, quantity);
    }
}
