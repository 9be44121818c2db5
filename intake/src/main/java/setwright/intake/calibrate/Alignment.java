package setwright.intake.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import setwright.core.numerics.Lag;
import setwright.core.numerics.Robust;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/**
 * Finds channels that come late and puts them in time.
 *
 * <p>Steering, yaw rate, lateral acceleration and the path tell of the same turning; acceleration, speed and position of the
 * same pulling. A car answers its steering within a tenth of a second or so, and that is physics and stays. A channel that is
 * off the middle of its group by more than {@value #PHYSICAL_S} s was recorded late. Two channels alone cannot tell which is
 * the late one: then the later is moved and that is said.
 */
final class Alignment {
    /** Yaw and lateral response of a car to its steering take 0.05 to 0.15 s (ISO 7401 response times; value from memory). */
    static final double PHYSICAL_S = 0.2;

    private static final double LONGEST_S = 2.5;
    /** Less related than this, a lag is a matter of chance. */
    private static final double TELLING = 0.7;
    /** A channel that had to be moved and still leaves a fifth of its variance unexplained is wrong. */
    private static final double GOOD_AFTER_MOVE = 0.9;
    /** A channel that had to be moved and has lost or gained a quarter of its size was filtered on the way. */
    private static final double SIZE_AFTER_MOVE = 1.25;
    /** Beyond this share of its hardest cornering a car slides, and its steering runs ahead of its turning. */
    private static final double LINEAR_SHARE = 0.6;

    private static final List<Quantity> PLACE =
            List.of(Quantity.POSITION_X, Quantity.POSITION_Y, Quantity.LATITUDE, Quantity.LONGITUDE);

    /** A jump of a position or a dropped sample stands out from the hardest percent of driving by more than this. */
    private static final double JUMP = 1.5;

    private Alignment() {}

    private static double[] withoutJumps(double[] signal) {
        double[] size = Arrays.stream(signal).map(Math::abs).toArray();
        double most = JUMP * Robust.quantile(size, 0.99);
        return Arrays.stream(signal)
                .map(value -> Math.abs(value) <= most ? value : Double.NaN)
                .toArray();
    }

    /** One witness of a motion, and the channels that move with it. */
    private static final class Member {
        private final String words;
        private final List<Quantity> channels;
        private final double[] signal;
        private final boolean mayBeDropped;
        /** Whether the signal is in the unit that the group is compared in; a steering angle is only proportional to it. */
        private final boolean mayBeCompared;

        Member(String words, List<Quantity> channels, double[] signal, boolean mayBeDropped) {
            this.words = words;
            this.channels = channels;
            this.signal = withoutJumps(signal);
            this.mayBeDropped = mayBeDropped;
            this.mayBeCompared =
                    !channels.contains(Quantity.STEERING_WHEEL_ANGLE) && !channels.contains(Quantity.ROAD_WHEEL_ANGLE);
        }
    }

    static void apply(Bench bench) {
        align(bench, pulling(bench));
        align(bench, turning(bench));
    }

    private static List<Member> pulling(Bench bench) {
        List<Member> members = new ArrayList<>();
        members.add(new Member("speed", List.of(Quantity.SPEED), bench.slowSpeedRise(), false));
        if (bench.has(Quantity.LONGITUDINAL_ACCELERATION)) {
            members.add(
                    member(bench, Quantity.LONGITUDINAL_ACCELERATION, bench.slow(Quantity.LONGITUDINAL_ACCELERATION)));
        }
        bench.path()
                .ifPresent(
                        path -> members.add(new Member("position", place(bench), bench.rise(path.speedMps()), false)));
        return members;
    }

    private static List<Member> turning(Bench bench) {
        List<Member> members = new ArrayList<>();
        double[] v = bench.slow(Quantity.SPEED);
        for (Quantity steer : List.of(Quantity.STEERING_WHEEL_ANGLE, Quantity.ROAD_WHEEL_ANGLE)) {
            if (bench.has(steer)) {
                double[] signal = bench.slow(steer);
                for (int i = 0; i < signal.length; i++) {
                    signal[i] *= v[i] > Bench.SLOWEST_MPS ? v[i] : Double.NaN;
                }
                members.add(new Member(steer.words(), List.of(steer), signal, false));
            }
        }
        bench.path()
                .ifPresent(path ->
                        members.add(new Member("position", place(bench), fastOnly(path.turnRadPerS(), v), false)));
        if (bench.has(Quantity.YAW_RATE)) {
            members.add(member(bench, Quantity.YAW_RATE, fastOnly(bench.slow(Quantity.YAW_RATE), v)));
        }
        if (bench.has(Quantity.LATERAL_ACCELERATION)) {
            double[] signal = bench.slow(Quantity.LATERAL_ACCELERATION);
            for (int i = 0; i < signal.length; i++) {
                signal[i] /= v[i] > Bench.SLOWEST_MPS ? v[i] : Double.NaN;
            }
            members.add(member(bench, Quantity.LATERAL_ACCELERATION, signal));
        }
        return bench.turnRate()
                .map(turn -> steeringWhereLinear(members, turn, v))
                .orElse(members);
    }

    private static List<Member> steeringWhereLinear(List<Member> members, double[] turn, double[] v) {
        double[] demand = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            demand[i] = Math.abs(v[i] * turn[i]);
        }
        double most = LINEAR_SHARE * Robust.quantile(demand, 0.98);
        List<Member> kept = new ArrayList<>();
        for (Member member : members) {
            if (member.mayBeCompared) {
                kept.add(member);
                continue;
            }
            double[] signal = member.signal.clone();
            for (int i = 0; i < signal.length; i++) {
                signal[i] = demand[i] < most ? signal[i] : Double.NaN;
            }
            kept.add(new Member(member.words, member.channels, signal, member.mayBeDropped));
        }
        return kept;
    }

    private static Member member(Bench bench, Quantity quantity, double[] signal) {
        return new Member(quantity.words(), List.of(quantity), signal, bench.has(quantity));
    }

    private static List<Quantity> place(Bench bench) {
        return PLACE.stream().filter(bench::has).toList();
    }

    private static double[] fastOnly(double[] signal, double[] v) {
        double[] out = signal.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] = v[i] > Bench.SLOWEST_MPS ? out[i] : Double.NaN;
        }
        return out;
    }

    private static void align(Bench bench, List<Member> members) {
        if (members.size() < 2) {
            return;
        }
        Lag[][] all = lags(bench, members);
        int reference = reference(all);
        Lag[] lags = all[reference];
        double[] known = new double[members.size()];
        for (int i = 0; i < lags.length; i++) {
            known[i] = Math.abs(lags[i].correlation()) >= TELLING ? lags[i].seconds() : Double.NaN;
        }
        double middle = lowerMedian(known);
        boolean pair = Arrays.stream(known).filter(Double::isFinite).count() == 2;
        double anchor = anchor(members, known, middle);
        for (int i = 0; i < lags.length; i++) {
            Member member = members.get(i);
            if (Double.isNaN(known[i])) {
                poor(bench, member, lags[i], members.get(reference));
            } else if (Math.abs(known[i] - middle) > PHYSICAL_S
                    && clearly(bench, members.get(reference), member, lags[i], middle)) {
                move(bench, member, members.get(reference), known[i] - anchor, lags[i].correlation(), pair);
            }
        }
    }

    /** Where a late channel belongs: with the timely ones that measure the motion itself; a steering runs a little ahead. */
    private static double anchor(List<Member> members, double[] known, double middle) {
        double sum = 0.0;
        int count = 0;
        for (int i = 0; i < known.length; i++) {
            if (members.get(i).mayBeCompared && Math.abs(known[i] - middle) <= PHYSICAL_S) {
                sum += known[i];
                count++;
            }
        }
        return count > 0 ? sum / count : middle;
    }

    /** How late each member comes behind each other one. */
    private static Lag[][] lags(Bench bench, List<Member> members) {
        int count = members.size();
        Lag[][] lags = new Lag[count][count];
        IntStream.range(0, count * count).parallel().forEach(k -> {
            int one = k / count;
            int other = k % count;
            if (one <= other) {
                lags[one][other] =
                        Lag.between(members.get(one).signal, members.get(other).signal, bench.slowStepS(), LONGEST_S);
            }
        });
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                Lag lag = lags[j][i];
                lags[i][j] = new Lag(-lag.seconds(), lag.correlation(), lag.correlationAtZero(), lag.atLimit());
            }
        }
        return lags;
    }

    /** The member that the others follow best. */
    private static int reference(Lag[][] lags) {
        int best = 0;
        double most = -1.0;
        for (int i = 0; i < lags.length; i++) {
            double sum = 0.0;
            for (int j = 0; j < lags.length; j++) {
                sum += i == j ? 0.0 : Math.abs(lags[i][j].correlation());
            }
            if (sum > most + 1.0e-9) {
                best = i;
                most = sum;
            }
        }
        return best;
    }

    /** The middle lag; of an even number the earlier of the two, because channels come late, never early. */
    private static double lowerMedian(double[] lags) {
        double[] sorted = Robust.finite(lags);
        Arrays.sort(sorted);
        return sorted[(sorted.length - 1) / 2];
    }

    /** Tells whether the lag found fits clearly better than the longest one that physics allows. */
    private static boolean clearly(Bench bench, Member reference, Member member, Lag lag, double middle) {
        double allowed = middle + Math.copySign(PHYSICAL_S, lag.seconds() - middle);
        int shift = (int) Math.round(allowed / bench.slowStepS());
        double[] shifted = new double[member.signal.length];
        int common = 0;
        for (int i = 0; i < shifted.length; i++) {
            int from = i + shift;
            shifted[i] = from >= 0 && from < shifted.length ? member.signal[from] : Double.NaN;
            common += Double.isFinite(shifted[i]) && Double.isFinite(reference.signal[i]) ? 1 : 0;
        }
        double there = Math.abs(Lag.correlation(reference.signal, shifted));
        // Standard error of Fisher's z is 1 / sqrt(n - 3) for n independent values.
        double error = 1.0 / Math.sqrt(Math.max(1.0, common / bench.samplesPerIndependent() - 3.0));
        return fisher(Math.abs(lag.correlation())) - fisher(there) > Calibrator.CLEAR * error;
    }

    /** Standard deviation; jumps have been taken out before. */
    private static double spread(double[] signal) {
        return Math.sqrt(StatUtils.variance(Robust.finite(signal)));
    }

    private static double fisher(double correlation) {
        double r = Math.min(correlation, 0.99999);
        return 0.5 * Math.log((1.0 + r) / (1.0 - r));
    }

    private static void move(
            Bench bench, Member member, Member reference, double late, double correlation, boolean pair) {
        String which =
                pair ? " (with two channels only, which of them is off cannot be told; this is the later one)" : "";
        double size = spread(member.signal) / spread(reference.signal);
        boolean comparable = member.mayBeDropped && reference.mayBeCompared;
        boolean filtered = comparable && (size > SIZE_AFTER_MOVE || size < 1.0 / SIZE_AFTER_MOVE);
        if (member.mayBeDropped && (Math.abs(correlation) < GOOD_AFTER_MOVE || filtered)) {
            member.channels.forEach(bench::drop);
            bench.remark(Calibrator.text(
                    "The %s is left out: it comes %.2f s after the %s, and once moved still correlates only %.2f with it at %.2f"
                            + " times its size.",
                    member.words, late, reference.words, Math.abs(correlation), size));
            return;
        }
        for (Quantity channel : member.channels) {
            bench.advance(channel, late);
        }
        bench.note(new Calibration(
                member.words + " lag",
                late,
                "s",
                Calibrator.text(
                        "it comes %.2f s after the other channels of the same motion (correlation %.3f once moved)%s",
                        late, Math.abs(correlation), which)));
    }

    private static void poor(Bench bench, Member member, Lag lag, Member reference) {
        Optional<Quantity> channel = member.channels.stream().findFirst();
        if (member.mayBeDropped && channel.isPresent()) {
            member.channels.forEach(bench::drop);
            bench.remark(Calibrator.text(
                    "The %s is left out: at no lag does it follow the %s (correlation %.2f).",
                    member.words, reference.words, lag.correlation()));
        } else {
            bench.remark(Calibrator.text(
                    "The %s hardly follows the %s (correlation %.2f); their timing could not be checked.",
                    member.words, reference.words, lag.correlation()));
        }
    }
}
