package setwright.intake;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Laps of a car on an invented closed curve, worked out from closed forms: its speed and curvature are waves of the distance, and
 * every channel follows from them by the single-track formulas. For tests of layouts, units and signs.
 */
final class SyntheticRun {
    static final double WHEELBASE_M = 2.6;
    static final double RATIO = 14.0;
    private static final double UNDERSTEER = 1.5e-3;
    private static final double RATE_HZ = 50.0;

    private final Map<String, double[]> columns = new LinkedHashMap<>();
    private final Map<String, String> formats = new LinkedHashMap<>();

    SyntheticRun(long seed, double seconds) {
        Random random = new Random(seed);
        int count = (int) (seconds * RATE_HZ);
        double lap = 2400.0;
        double[] phase = random.doubles(6, 0.0, 2.0 * Math.PI).toArray();
        for (String name :
                List.of("t", "v", "ax", "ay", "r", "steer", "throttle", "brake", "x", "y", "s", "lap", "rpm")) {
            columns.put(name, new double[count]);
            formats.put(name, "%.4f");
        }
        formats.put("lap", "%.0f");
        formats.put("r", "%.5f");
        formats.put("steer", "%.5f");
        formats.put("t", "%.3f");
        double s = 0.0;
        double x = 0.0;
        double y = 0.0;
        double heading = 0.3;
        double step = 1.0 / RATE_HZ;
        for (int i = 0; i < count; i++) {
            double along = 2.0 * Math.PI * s / lap;
            double v = 38.0 + 14.0 * Math.sin(3.0 * along + phase[0]) + 6.0 * Math.sin(5.0 * along + phase[1]);
            double slope =
                    (14.0 * 3.0 * Math.cos(3.0 * along + phase[0]) + 6.0 * 5.0 * Math.cos(5.0 * along + phase[1]))
                            * 2.0
                            * Math.PI
                            / lap;
            double ax = v * slope;
            double kappa = 2.0 * Math.PI / lap
                    + 0.008 * Math.sin(4.0 * along + phase[2])
                    + 0.006 * Math.sin(7.0 * along + phase[3]);
            double r = v * kappa;
            put(i, "t", i * step);
            put(i, "v", v);
            put(i, "ax", ax + 0.2 * random.nextGaussian());
            put(i, "ay", v * r + 0.2 * random.nextGaussian());
            put(i, "r", r + 0.005 * random.nextGaussian());
            put(i, "steer", RATIO * (WHEELBASE_M * kappa + UNDERSTEER * v * r) + 0.003 * random.nextGaussian());
            put(i, "throttle", Math.max(0.0, Math.min(1.0, 0.3 + ax / 5.0)));
            put(i, "brake", Math.max(0.0, Math.min(1.0, -(ax + 2.0) / 12.0)));
            put(i, "x", x);
            put(i, "y", y);
            put(i, "s", s % lap);
            put(i, "lap", Math.floor(s / lap));
            put(i, "rpm", 3000.0 + 60.0 * v);
            heading += r * step;
            x += v * step * Math.cos(heading - 0.5 * r * step);
            y += v * step * Math.sin(heading - 0.5 * r * step);
            s += v * step;
        }
    }

    private void put(int row, String column, double value) {
        get(column)[row] = value;
    }

    double[] get(String column) {
        double[] values = columns.get(column);
        if (values == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return values;
    }

    /** Adds a column. */
    void add(String column, double[] values) {
        columns.put(column, values.clone());
    }

    /** How one column is written. */
    record Writing(String column, String header, double factor, double offset) {
        Writing(String column, String header, double factor) {
            this(column, header, factor, 0.0);
        }
    }

    /** The usual columns under plain headers, SI units. */
    static List<Writing> plain(boolean position) {
        List<Writing> all = new ArrayList<>(List.of(
                new Writing("t", "time [s]", 1.0),
                new Writing("v", "speed [m/s]", 1.0),
                new Writing("ax", "longitudinal acceleration [m/s2]", 1.0),
                new Writing("ay", "lateral acceleration [m/s2]", 1.0),
                new Writing("r", "yaw rate [rad/s]", 1.0),
                new Writing("steer", "steering wheel angle [rad]", 1.0),
                new Writing("throttle", "throttle [%]", 100.0),
                new Writing("brake", "brake [%]", 100.0),
                new Writing("lap", "lap number", 1.0)));
        if (position) {
            all.add(new Writing("x", "position x [m]", 1.0));
            all.add(new Writing("y", "position y [m]", 1.0));
        }
        return all;
    }

    static List<Writing> replaced(List<Writing> all, Writing other) {
        List<Writing> out = new ArrayList<>(all);
        out.replaceAll(w -> w.column().equals(other.column()) ? other : w);
        return out;
    }

    static List<Writing> shuffled(List<Writing> all, Random random) {
        List<Writing> out = new ArrayList<>(all);
        Collections.shuffle(out, random);
        return out;
    }

    String csv(List<Writing> writings, char delimiter, boolean decimalComma) {
        StringBuilder text = new StringBuilder();
        String separator = String.valueOf(delimiter);
        text.append(String.join(
                        separator, writings.stream().map(Writing::header).toList()))
                .append('\n');
        int rows = get("t").length;
        for (int i = 0; i < rows; i++) {
            for (int c = 0; c < writings.size(); c++) {
                Writing w = writings.get(c);
                double value = w.factor() * get(w.column())[i] + w.offset();
                // Enough digits that any unit holds the same information.
                String cell = w.column().equals("lap") || w.column().equals("t")
                        ? String.format(Locale.ROOT, formats.getOrDefault(w.column(), "%.5f"), value)
                        : String.format(Locale.ROOT, "%.9g", value);
                text.append(c == 0 ? "" : separator).append(decimalComma ? cell.replace('.', ',') : cell);
            }
            text.append('\n');
        }
        return text.toString();
    }

    static Path write(Path folder, String name, String text) {
        return write(folder, name, text, StandardCharsets.UTF_8);
    }

    static Path write(Path folder, String name, String text, Charset charset) {
        try {
            return Files.write(folder.resolve(name), text.getBytes(charset));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
