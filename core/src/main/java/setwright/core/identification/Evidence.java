package setwright.core.identification;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** What several stints of a car show of it. */
record Evidence(List<StintEvidence> parts) {
    Evidence {
        parts = List.copyOf(parts);
    }

    int size() {
        return parts.stream().mapToInt(StintEvidence::size).sum();
    }

    /** Returns what gives residuals over their standard deviations for parameters about the given ones. */
    Function<double[], double[]> about(double[] parameters) {
        List<Function<double[], double[]>> all =
                parts.stream().map(part -> part.about(parameters)).toList();
        return moved -> all.stream()
                .flatMapToDouble(part -> Arrays.stream(part.apply(moved)))
                .toArray();
    }

    /** Returns measured and modelled balance angle of each corner and phase, deg. */
    double[][] balances(double[] parameters) {
        List<double[][]> pairs =
                parts.stream().map(part -> part.balances(parameters)).toList();
        return new double[][] {
            pairs.stream().flatMapToDouble(pair -> Arrays.stream(pair[0])).toArray(),
            pairs.stream().flatMapToDouble(pair -> Arrays.stream(pair[1])).toArray()
        };
    }

    /** Returns speed, m/s, acceleration, m/s², and number of moments of each bin at full throttle on straights. */
    List<double[]> drive() {
        return parts.stream()
                .flatMap(part -> part.drive().stream())
                .sorted(Comparator.comparingDouble(bin -> bin[0]))
                .toList();
    }
}
