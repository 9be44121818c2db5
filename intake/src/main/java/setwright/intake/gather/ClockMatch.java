package setwright.intake.gather;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
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
        double shortest = Math.max(
                SHORTEST_COMMON_S, 0.5 * Math.min(first.lastS() - first.firstS(), second.lastS() - second.firstS()));
        int[] known = new int[] {known(a), known(b)};
        Place best = new Place(Double.NaN, -1.0);
        Place asTheyStand = best;
        double asStands = first.firstS() - second.firstS();
        for (int k = -(size - 1); k <= size - 1; k++) {
            double value = agreement(profile[k + size - 1], quantity);
            double atS = -k / rate;
            if (common(known, k) < shortest * rate) {
                continue;
            }
            best = value > best.agreement() ? new Place(atS, value) : best;
            // As they stand, sample 0 of the second lies at second.firstS() on the clock of the first.
            boolean near = Math.abs(atS + asStands) <= SAME_CLOCK_S;
            asTheyStand = near && value > asTheyStand.agreement() ? new Place(atS, value) : asTheyStand;
        }
        double independent = seconds(first, second) / independentS(a, rate);
        double lines = Math.max(2.0, independent - 1.0);
        double most = new FDistribution(lines, lines).inverseCumulativeProbability(LEVEL);
        boolean stands = unexplained(asTheyStand) <= most * unexplained(best) && asTheyStand.agreement() >= FITTING;
        Place chosen = stands ? asTheyStand : best;
        if (chosen.agreement() < FITTING) {
            throw unlike(first, second, quantity, chosen);
        }
        if (!stands) {
            refuseAmbiguous(first, second, profile, known, new Search(chosen, most, rate, size, shortest, quantity));
        }
        return refined(first, one, second, other, chosen, quantity);
    }

    /**
     * A place where the two may fit.
     *
     * @param atS        where the second begins, s after the first began
     * @param agreement  correlation there
     */
    private record Place(double atS, double agreement) {}

    private record Search(Place chosen, double most, double rate, int size, double shortest, Quantity quantity) {}

    private static double unexplained(Place place) {
        return 1.0 - place.agreement() * place.agreement();
    }

    private static void refuseAmbiguous(
            TimedTable first, TimedTable second, double[] profile, int[] known, Search search) {
        Place rival = new Place(Double.NaN, -1.0);
        for (int k = -(search.size() - 1); k <= search.size() - 1; k++) {
            double atS = -k / search.rate();
            double value = agreement(profile[k + search.size() - 1], search.quantity());
            boolean elsewhere = Math.abs(atS - search.chosen().atS()) > PEAK_S;
            if (elsewhere && common(known, k) >= search.shortest() * search.rate() && value > rival.agreement()) {
                rival = new Place(atS, value);
            }
        }
        if (rival.agreement() > 0.0 && unexplained(rival) <= search.most() * unexplained(search.chosen())) {
            throw InputProblem.in(second.table().file())
                    .expected("one time at which it fits to " + first.table().file() + " by their "
                            + search.quantity().words())
                    .found(String.format(
                            Locale.ROOT,
                            "two: beginning %+.1f s and %+.1f s after it (correlation %.4f and %.4f)",
                            search.chosen().atS(),
                            rival.atS(),
                            search.chosen().agreement(),
                            rival.agreement()))
                    .advice("Laps are alike: give both files with the out lap and the in lap, or on one clock.")
                    .problem();
        }
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

    /** What turns the other way round in one of the files still tells the time. */
    private static double agreement(double correlation, Quantity quantity) {
        return quantity == Quantity.SPEED ? correlation : Math.abs(correlation);
    }

    /** How many samples both can have at a shift; their gaps are not counted. */
    private static int common(int[] known, int k) {
        return Math.min(known[0], known[1] - k) - Math.max(0, -k);
    }

    /** One more than the last sample that is known. */
    private static int known(double[] signal) {
        int end = signal.length;
        while (end > 0 && Double.isNaN(signal[end - 1])) {
            end--;
        }
        return end;
    }

    private static double seconds(TimedTable first, TimedTable second) {
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
