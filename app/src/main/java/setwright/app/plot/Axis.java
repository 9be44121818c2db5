package setwright.app.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Round values along an axis.
 *
 * @param step      distance between ticks: 1, 2 or 5 times a power of ten
 * @param ticks     ascending, all within the range asked for
 * @param decimals  that a tick needs to be written exactly
 */
public record Axis(double step, List<Double> ticks, int decimals) {
    private static final double[] ROUND = {1.0, 2.0, 5.0, 10.0};

    public Axis {
        ticks = List.copyOf(ticks);
    }

    /** Returns at most {@code most} ticks between two values, {@code low < high}. */
    public static Axis between(double low, double high, int most) {
        if (!(low < high) || most < 2) {
            throw new IllegalArgumentException(
                    "an axis needs low < high and room for 2 ticks, got " + low + ", " + high + ", " + most);
        }
        double raw = (high - low) / most;
        double power = Math.pow(10.0, Math.floor(Math.log10(raw)));
        double step = Arrays.stream(ROUND)
                .map(round -> round * power)
                .filter(candidate -> candidate >= raw * (1.0 - 1e-9))
                .findFirst()
                .orElse(10.0 * power);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        return new Axis(step, ticks, decimals);
    }
}
