package setwright.intake.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The samples by which constants of a logger are told: all of a recording, or of a long one forty minutes in which the car is
 * driven, spread over the whole of it. By then an offset, a scale or a delay is known as well as it will ever be.
 */
final class DrivenTime {
    /** Twelve hundred values that do not hang together: a constant is then known to a thirty-fifth of the scatter. */
    static final double ENOUGH_S = 2400.0;

    /** About a lap, so that what a lap closes is mostly within. */
    private static final double PIECE_S = 120.0;
    /** Longer than any delay that is looked for, so that no piece is compared with the next. */
    private static final double BETWEEN_S = 5.0;

    private final int samples;
    private final List<Run> runs;
    private final int between;

    private record Run(int from, int to) {
        int size() {
            return to - from;
        }
    }

    private DrivenTime(int samples, List<Run> runs, int between) {
        this.samples = samples;
        this.runs = runs;
        this.between = between;
    }

    /**
     * Finds it.
     *
     * @param speedMps    of a car; NaN in gaps
     * @param slowestMps  below it the car stands or rolls
     */
    static DrivenTime of(double[] speedMps, double slowestMps, double rateHz) {
        int piece = (int) Math.round(PIECE_S * rateHz);
        int most = (int) Math.round(ENOUGH_S / PIECE_S);
        List<Run> driven = new ArrayList<>();
        for (int from = 0; from + piece <= speedMps.length; from += piece) {
            long moving = Arrays.stream(speedMps, from, from + piece)
                    .filter(speed -> speed > slowestMps)
                    .count();
            if (2 * moving > piece) {
                driven.add(new Run(from, from + piece));
            }
        }
        boolean all = speedMps.length <= ENOUGH_S * rateHz || driven.size() < most;
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < most && !all; i++) {
            runs.add(driven.get(i * driven.size() / most));
        }
        return new DrivenTime(speedMps.length, all ? List.of(new Run(0, speedMps.length)) : joined(runs), (int)
                Math.round(BETWEEN_S * rateHz));
    }

    private static List<Run> joined(List<Run> pieces) {
        List<Run> runs = new ArrayList<>();
        for (Run piece : pieces) {
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).to() == piece.from()) {
                runs.set(last, new Run(runs.get(last).from(), piece.to()));
            } else {
                runs.add(piece);
            }
        }
        return runs;
    }

    /** Returns what a channel has in this time, with a gap between pieces that do not follow each other. */
    double[] of(double[] channel) {
        if (channel.length != samples) {
            throw new IllegalArgumentException("a channel of " + channel.length + " samples instead of " + samples);
        }
        int size = runs.stream().mapToInt(Run::size).sum() + between * (runs.size() - 1);
        double[] out = new double[size];
        Arrays.fill(out, Double.NaN);
        int at = 0;
        for (Run run : runs) {
            System.arraycopy(channel, run.from(), out, at, run.size());
            at += run.size() + between;
        }
        return out;
    }
}
