package setwright.core.trial;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/*
 * Design note. The same model that judges a trial says beforehand what it will see: the change has the variance k (b + w / n), with b between
 * runs, w within a run of n laps, and k of the order of the runs. Its degrees of freedom mix those of both (Satterthwaite). What is seen in four of
 * five trials is the sum of two quantiles of Student's t away from nothing, as in SmallestEffect.
 */

/**
 * An order of runs, before it is driven.
 *
 * @param changed  for each run, whether the change is on the car
 */
public record TrialPlan(List<Boolean> changed) {
    private static final double POWER = 0.8;
    private static final int FEWEST_LAPS = 3;
    private static final int MOST_LAPS = 40;

    public TrialPlan {
        changed = List.copyOf(changed);
    }

    /** Returns the plan that letters give, such as {@code ABA}: A without the change, B with it. */
    public static TrialPlan of(String letters) {
        return new TrialPlan(letters.chars().mapToObj(letter -> letter == 'B').toList());
    }

    /** Returns its letters, such as {@code ABA}. */
    public String letters() {
        return changed.stream().map(with -> with ? "B" : "A").collect(Collectors.joining());
    }

    /** Tells whether what the day does can be told from the change. */
    public boolean takesOutTheDay() {
        return changed.size() >= 3 && new SingularValueDecomposition(design(true)).getRank() == 3;
    }

    private Array2DRowRealMatrix design(boolean day) {
        double[][] rows = new double[changed.size()][];
        Arrays.setAll(rows, r -> {
            double with = changed.get(r) ? 1.0 : 0.0;
            return day ? new double[] {1.0, with, r} : new double[] {1.0, with};
        });
        return new Array2DRowRealMatrix(rows);
    }

    /** Returns the sum of squared weights that the runs have in the change, for runs of like length. */
    double weights() {
        Array2DRowRealMatrix design = design(takesOutTheDay());
        return new SingularValueDecomposition(design.transpose().multiply(design))
                .getSolver()
                .getInverse()
                .getEntry(1, 1);
    }

    /**
     * Returns the least change that four of five such trials see.
     *
     * @param laps          of each run, two at least
     * @param lapDeviation  within a run
     * @param runDeviation  between runs, as it is known
     * @param level         two-sided error
     */
    public double leastVisible(int laps, double lapDeviation, double runDeviation, double level) {
        double between = weights() * runDeviation * runDeviation;
        double within = weights() * lapDeviation * lapDeviation / laps;
        int told = takesOutTheDay() ? 3 : 2;
        double freeBetween = TrialModel.KNOWN_FREEDOM + changed.size() - told;
        double freeWithin = Math.max(1.0, changed.size() * (laps - 1.0) - 1.0);
        double variance = between + within;
        double free = variance * variance / (between * between / freeBetween + within * within / freeWithin);
        TDistribution t = new TDistribution(free);
        return (t.inverseCumulativeProbability(1.0 - 0.5 * level) + t.inverseCumulativeProbability(POWER))
                * Math.sqrt(variance);
    }

    /** Returns how many laps each run needs until four of five trials see a change of some size; empty where forty would not do. */
    public OptionalInt lapsFor(double size, double lapDeviation, double runDeviation, double level) {
        return IntStream.rangeClosed(FEWEST_LAPS, MOST_LAPS)
                .filter(laps -> leastVisible(laps, lapDeviation, runDeviation, level) <= Math.abs(size))
                .findFirst();
    }
}
