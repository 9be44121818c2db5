package setwright.core.circuit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Invented laps of a point mass on an invented circuit, recorded with noise. The truth is kept beside the recording. */
final class Laps {
    private final Shape shape;
    private final Random random;
    private double rate = 50.0;
    private int count = 6;
    private double grip = 13.0;
    private double downforce;
    private double topSpeed = 65.0;
    private double scatter = 0.002;
    private double lineScatter = 0.4;
    private double positionNoise = 0.1;
    private double yawBias = 0.005;
    private double startSpeed = Double.NaN;
    private final Map<Integer, double[]> slower = new TreeMap<>();
    private double turn;
    private double shiftX;
    private double shiftY;
    private boolean mirrored;
    private double startStation;
    private double extra;
    private double scatterLocal;

    Laps(Shape shape, long seed) {
        this.shape = shape;
        this.random = new Random(seed);
    }

    Laps rate(double hz) {
        rate = hz;
        return this;
    }

    Laps count(int laps) {
        count = laps;
        return this;
    }

    Laps grip(double mps2, double topMps) {
        grip = mps2;
        topSpeed = topMps;
        return this;
    }

    /** Grip that grows with the square of speed, 1/m. */
    Laps downforce(double perMetre) {
        downforce = perMetre;
        return this;
    }

    /** Standard deviation of speed along the lap, as a share. */
    Laps scatter(double share) {
        scatter = share;
        return this;
    }

    Laps positionNoise(double metres) {
        positionNoise = metres;
        return this;
    }

    /** Standard deviation of speed of each stretch of 200 m by itself, as a share: a driver who is not steady. */
    Laps unsteady(double share) {
        scatterLocal = share;
        return this;
    }

    /** One lap is driven slower by a factor between two stations. */
    Laps slower(int lap, double from, double to, double factor) {
        slower.put(lap, new double[] {from, to, factor});
        return this;
    }

    Laps startSpeed(double mps) {
        startSpeed = mps;
        return this;
    }

    /** The recording begins at this station and ends as far after the last crossing. */
    Laps from(double station, double after) {
        startStation = station;
        extra = after;
        return this;
    }

    Laps placed(double angle, double x, double y) {
        turn = angle;
        shiftX = x;
        shiftY = y;
        return this;
    }

    Laps mirrored() {
        mirrored = true;
        return this;
    }

    /** What was driven: the recording with every channel, and when the start line was crossed, s. */
    record Driven(Recording recording, List<Double> crossingS, double[] speed) {
        Recording without(Quantity... quantities) {
            Map<Quantity, Channel> left = new EnumMap<>(Quantity.class);
            for (Quantity quantity : recording.quantities()) {
                if (!List.of(quantities).contains(quantity)) {
                    left.put(quantity, recording.channel(quantity));
                }
            }
            return new Recording(recording.name(), recording.sampleRateHz(), left, List.of());
        }

        Recording unmarked() {
            return without(Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER, Quantity.LAP_DISTANCE);
        }

        double lapTime(int lap) {
            return crossingS.get(lap + 1) - crossingS.get(lap);
        }
    }

    /** Speed profile of the point mass: grip circle, 5 m/s2 forward, 10 m/s2 back. */
    private double[] profile() {
        int n = shape.nodes();
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            double k = Math.abs(shape.curvature(i)) - downforce;
            v[i] = k > 0.0 ? Math.min(topSpeed, Math.sqrt(grip / k)) : topSpeed;
        }
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < n; i++) {
                int next = (i + 1) % n;
                v[next] = Math.min(v[next], Math.sqrt(v[i] * v[i] + 2.0 * 5.0 * free(v[i], i) * Shape.STEP_M));
            }
            for (int i = n - 1; i >= 0; i--) {
                int next = (i + 1) % n;
                v[i] = Math.min(v[i], Math.sqrt(v[next] * v[next] + 2.0 * 10.0 * free(v[next], next) * Shape.STEP_M));
            }
        }
        return v;
    }

    private double free(double v, int node) {
        double used = Math.abs(shape.curvature(node)) * v * v / (grip + downforce * v * v);
        return Math.sqrt(Math.max(0.02, 1.0 - used * used));
    }

    Driven drive() {
        double[] profile = profile();
        double length = shape.length();
        int waves = 5;
        double[][] waveV = new double[count + 2][2 * waves];
        double[][] waveN = new double[count + 2][2 * waves];
        for (double[] lap : waveV) {
            fill(lap);
        }
        for (double[] lap : waveN) {
            fill(lap);
        }
        double[][] local = new double[count + 2][(int) (length / 200.0) + 1];
        for (double[] lap : local) {
            fill(lap);
        }
        int fine = (int) Math.max(2.0, Math.ceil(200.0 / rate));
        double dt = 1.0 / rate / fine;
        double s = startStation;
        double pace = Double.isNaN(startSpeed) ? 1e9 : startSpeed;
        List<double[]> rows = new ArrayList<>();
        List<Double> crossings = new ArrayList<>();
        if (startStation == 0.0) {
            crossings.add(0.0);
        }
        double end = (startStation > 0.0 ? count + 1 : count) * length + extra;
        double time = 0.0;
        for (long step = 0; s < end; step++) {
            int lap = (int) (s / length);
            double here = s - lap * length;
            int node = (int) (here / Shape.STEP_M) % shape.nodes();
            double wave = scatter * sum(waveV[lap], here / length);
            double factor = 1.0 + scatterLocal * local[lap][(int) (here / 200.0)];
            double[] slow = slower.get(lap);
            if (slow != null && here >= slow[0] && here < slow[1]) {
                factor *= slow[2];
            }
            pace += 4.0 * dt;
            double v = Math.min(pace, profile[node] * (1.0 + wave) * factor);
            // Offsets join from lap to lap: their waves vanish at the line.
            double n = lineScatter * sum(waveN[lap], here / length) * Math.sin(Math.PI * here / length);
            if (step % fine == 0) {
                rows.add(new double[] {s, v, n, lap, here});
            }
            double before = s;
            s += v * dt;
            time += dt;
            if ((int) (before / length) != (int) (s / length)) {
                crossings.add(time - dt * (s - Math.floor(s / length) * length) / (s - before));
            }
        }
        return new Driven(recording(rows), crossings, profile);
    }

    private void fill(double[] waves) {
        for (int i = 0; i < waves.length; i++) {
            waves[i] = random.nextGaussian();
        }
    }

    private static double sum(double[] waves, double share) {
        double sum = 0.0;
        for (int k = 0; k < waves.length / 2; k++) {
            double angle = 2.0 * Math.PI * (2 * k + 1) * share;
            sum += waves[2 * k] * Math.sin(angle) + waves[2 * k + 1] * Math.cos(angle);
        }
        return sum / Math.sqrt(waves.length / 2.0);
    }

    private Recording recording(List<double[]> rows) {
        int size = rows.size();
        double[][] c = new double[8][size];
        double cosine = Math.cos(turn);
        double sine = Math.sin(turn);
        double side = mirrored ? -1.0 : 1.0;
        double lastLap = -1.0;
        for (int i = 0; i < size; i++) {
            double[] row = rows.get(i);
            double px = shape.x(row[4], row[2]) + positionNoise * random.nextGaussian();
            double py = side * (shape.y(row[4], row[2]) + positionNoise * random.nextGaussian());
            double kappa = side * shape.curvatureAt(row[4]);
            c[0][i] = row[1] * (1.0 + 0.001 * random.nextGaussian());
            c[1][i] = cosine * px - sine * py + shiftX;
            c[2][i] = sine * px + cosine * py + shiftY;
            c[3][i] = kappa * row[1] + yawBias + 0.004 * random.nextGaussian();
            c[4][i] = kappa * row[1] * row[1] + 0.2 * random.nextGaussian();
            c[5][i] = row[3];
            c[6][i] = row[3] != lastLap && (i > 0 || row[4] == 0.0) ? 1.0 : 0.0;
            c[7][i] = row[4];
            lastLap = row[3];
        }
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        Quantity[] quantities = {
            Quantity.SPEED,
            Quantity.POSITION_X,
            Quantity.POSITION_Y,
            Quantity.YAW_RATE,
            Quantity.LATERAL_ACCELERATION,
            Quantity.LAP_NUMBER,
            Quantity.LAP_TRIGGER,
            Quantity.LAP_DISTANCE
        };
        for (int k = 0; k < quantities.length; k++) {
            channels.put(quantities[k], Channel.of(c[k]));
        }
        return new Recording("invented", rate, channels, List.of());
    }
}
