package setwright.core.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/*
 * Design note. What differs between runs besides the setup can be taken out only where the runs tell it from the setup: that takes more runs than
 * there are things to tell, and surroundings that did not go with the setup. Where they do not, it is said and not taken out: a slope made of one
 * run would carry any value into the change.
 */

/** What else is known to differ between runs, and what of it can be told from the change. */
final class Surroundings {
    /** A track that is warmer by less does nothing that laps show (our choice). */
    private static final double LEAST_KELVIN = 1.0;
    /** Share of a difference that must not go with setup and day; below it the two are one (our choice). */
    private static final double LEAST_OWN_SHARE = 0.3;

    private final boolean tyreAge;
    private final boolean temperature;
    private final double middleTemperature;
    private final List<String> words;

    private Surroundings(boolean tyreAge, boolean temperature, double middleTemperature, List<String> words) {
        this.tyreAge = tyreAge;
        this.temperature = temperature;
        this.middleTemperature = middleTemperature;
        this.words = List.copyOf(words);
    }

    /**
     * Looks at what is known of the runs.
     *
     * @param plan  order of the runs
     * @param fuel  what is known of their fuel
     */
    static Surroundings of(List<TrialRun> runs, TrialPlan plan, FuelEffect fuel) {
        List<String> words = new ArrayList<>();
        if (fuel.known()
                && (fuel.recorded() || span(runs, run -> run.conditions().fuelStartKg()) > 0.0)) {
            words.add(
                    "The fuel on board is taken out of the lap times, as common practice and physics have it; its doubt counts.");
        }
        boolean age = tyreAge(runs, fuel.recorded(), words);
        boolean warmth = temperature(runs, plan, words);
        double middle = runs.stream()
                .mapToDouble(run -> run.conditions().trackTemperatureC().orElse(0.0))
                .average()
                .orElse(0.0);
        return new Surroundings(age, warmth, middle, words);
    }

    private static boolean tyreAge(List<TrialRun> runs, boolean burnKnown, List<String> words) {
        double span = span(
                runs,
                run -> run.conditions().tyreAgeLaps().isPresent()
                        ? OptionalDouble.of(run.conditions().tyreAgeLaps().getAsInt())
                        : OptionalDouble.empty());
        if (!(span > 0.0)) {
            return false;
        }
        words.add(
                burnKnown
                        ? "What the laps of a run show of ageing tyres is taken out between the runs as well."
                        : String.format(
                                Locale.ROOT,
                                "The tyres of these runs differ in age by up to %.0f laps. Without recorded fuel, wear cannot be told from"
                                        + " the fuel that burns, and is not taken out.",
                                span));
        return burnKnown;
    }

    private static boolean temperature(List<TrialRun> runs, TrialPlan plan, List<String> words) {
        double span = span(runs, run -> run.conditions().trackTemperatureC());
        if (!(span >= LEAST_KELVIN)) {
            return false;
        }
        boolean told = ownShare(runs, plan) >= LEAST_OWN_SHARE;
        words.add(String.format(
                Locale.ROOT,
                told
                        ? "What the temperature of the track does (it moved by %.0f K) is estimated from these runs and taken out."
                        : "The track's temperature moved by %.0f K. These runs are too few, or it went with the setup or the day: what it did"
                                + " cannot be told from the change.",
                span));
        return told;
    }

    /** Standard deviation of the temperature that goes with neither setup nor day, over its whole; 0 with too few runs. */
    private static double ownShare(List<TrialRun> runs, TrialPlan plan) {
        int others = plan.takesOutTheDay() ? 3 : 2;
        if (runs.size() < others + 2) {
            return 0.0;
        }
        double[][] rows = new double[runs.size()][];
        Arrays.setAll(rows, r -> {
            double changed = runs.get(r).changed() ? 1.0 : 0.0;
            return others == 3 ? new double[] {1.0, changed, r} : new double[] {1.0, changed};
        });
        RealVector values = new ArrayRealVector(runs.stream()
                .mapToDouble(run -> run.conditions().trackTemperatureC().orElseThrow())
                .toArray());
        Array2DRowRealMatrix design = new Array2DRowRealMatrix(rows);
        RealVector left = values.subtract(design.operate(
                new SingularValueDecomposition(design).getSolver().solve(values)));
        double mean = Arrays.stream(values.toArray()).average().orElseThrow();
        return left.getNorm() / values.mapSubtract(mean).getNorm();
    }

    /** Greatest less least; NaN unless all runs know it. */
    private static double span(List<TrialRun> runs, Function<TrialRun, OptionalDouble> value) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (TrialRun run : runs) {
            double here = value.apply(run).orElse(Double.NaN);
            least = Math.min(least, here);
            most = Math.max(most, here);
        }
        return most - least;
    }

    /** Returns what counts the laps within a run: the age of its tyres where that is told, else their place in the run. */
    double inRun(TrialRun run, TrialLap lap, double middleOfRun) {
        OptionalInt age = run.conditions().tyreAgeLaps();
        return tyreAge && age.isPresent() ? age.getAsInt() + lap.number() : lap.number() - middleOfRun;
    }

    /** Tells whether the temperature of the track is estimated. */
    boolean temperature() {
        return temperature;
    }

    /** Returns the temperature of a run's track against that of all runs, K. */
    double excessKelvin(TrialRun run) {
        return run.conditions().trackTemperatureC().orElse(middleTemperature) - middleTemperature;
    }

    /** Returns what is taken out and what is not, in plain sentences. */
    List<String> words() {
        return words;
    }
}
