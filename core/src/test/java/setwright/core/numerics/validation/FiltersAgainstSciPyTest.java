package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.ZeroPhaseLowPass;

/**
 * Filters against figures worked out once with SciPy 1.17.1 and NumPy 2.4.6, kept in a table: 64 samples at 50 Hz of a wave on a ramp
 * with a step and rough noise. They do not move unless a filter does.
 *
 * <p>Low-pass: {@code sosfiltfilt(butter(order, cutoff, fs=50, output="sos"), x, padtype="odd", padlen=ceil(2 * 50 / cutoff))},
 * which continues the edges as ours does, so that all samples agree. Polynomial: {@code savgol_filter(x, 9, 2, deriv, 0.02)}; at the
 * four samples next to each edge, where SciPy keeps the window and ours shortens it, {@code Polynomial.fit} of the second degree to
 * the shortened window.
 */
final class FiltersAgainstSciPyTest {
    private static final double RATE_HZ = 50.0;
    private static final List<String> LINES = lines();
    /** Fifteen digits are kept, and either program rounds sums of some hundred products. */
    private static final double ROUND_OFF = 1.0e-12;

    @ParameterizedTest
    @CsvSource({"2, 4.0, second_order", "4, 6.0, fourth_order"})
    void lowPassAgreesUpToTheEdges(int order, double cutOffHz, String column) {
        same(ZeroPhaseLowPass.butterworth(order, cutOffHz, RATE_HZ).apply(column("input")), column(column), 1.0);
    }

    @Test
    void polynomialAgreesUpToTheEdges() {
        same(LocalPolynomial.of(4, 2).smooth(column("input")), column("smooth"), 1.0);
    }

    @Test
    void slopeAgreesUpToTheEdges() {
        same(LocalPolynomial.of(4, 2).derivative(column("input"), 1.0 / RATE_HZ), column("slope"), RATE_HZ);
    }

    private static void same(double[] ours, double[] theirs, double factor) {
        assertThat(ours).hasSize(64);
        for (int i = 0; i < ours.length; i++) {
            assertThat(ours[i]).as("sample %d", i).isCloseTo(theirs[i], within(10.0 * factor * ROUND_OFF));
        }
    }

    private static double[] column(String name) {
        int at = List.of(LINES.get(0).split(",", -1)).indexOf(name);
        return LINES.stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[at]))
                .toArray();
    }

    private static List<String> lines() {
        try (InputStream table = FiltersAgainstSciPyTest.class.getResourceAsStream("filtered.csv")) {
            return new String(Objects.requireNonNull(table).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
