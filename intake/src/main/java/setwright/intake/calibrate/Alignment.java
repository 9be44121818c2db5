package setwright.intake.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
    /** A channel that had to be moved and still leaves a fifth of its variance unexplained is filtered or wrong. */
    private static final double GOOD_AFTER_MOVE = 0.9;

    private static final List<Quantity> PLACE =
            List.of(Quantity.POSITION_X, Quantity.POSITION_Y, Quantity.LATITUDE, Quantity.LONGITUDE);

    private Alignment() {}

    /** One witness of a motion, and the channels that move with it. */
    private static final class Member {
        private final String words;
        private final List<Quantity> channels;
        private final double[] signal;
        private final boolean mayBeDropped;

        Member(String words, List<Quantity> channels, double[] signal, boolean mayBeDropped) {
            this.words = words;
            this.channels = channels;
            this.signal = signal;
            this.mayBeDropped = mayBeDropped;
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
            members.add(member(bench, Quantity.LONGITUDINAL_ACCELERATION, bench.slow(Quantity.LONGITUDINAL_ACCELERATION)));
        }
        bench.path().ifPresent(path -> members.add(
                new Member("position", place(bench), bench.rise(path.speedMps()), false)));
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
        bench.path().ifPresent(path -> members.add(
                new Member("position", place(bench), fastOnly(path.turnRadPerS(), v), false)));
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
        return members;
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
        int reference = reference(bench, members);
        Lag[] lags = new Lag[members.size()];
        double[] known = new double[members.size()];
        for (int i = 0; i < lags.length; i++) {
            lags[i] = lag(bench, members.get(reference), members.get(i));
            known[i] = Math.abs(lags[i].correlation()) >= TELLING ? lags[i].seconds() : Double.NaN;
        }
        double middle = lowerMedian(known);
        boolean pair = Arrays.stream(known).filter(Double::isFinite).count() == 2;
        for (int i = 0; i < lags.length; i++) {
            Member member = members.get(i);
            double late = known[i] - middle;
            if (Double.isNaN(known[i])) {
                poor(bench, member, lags[i], members.get(reference));
            } else if (Math.abs(late) > PHYSICAL_S) {
                move(bench, member, late, lags[i].correlation(), pair);
            }
        }
    }

    /** The member that the others follow best. */
    private static int reference(Bench bench, List<Member> members) {
        int best = 0;
        double most = -1.0;
        for (int i = 0; i < members.size(); i++) {
            double sum = 0.0;
            for (int j = 0; j < members.size(); j++) {
                sum += i == j ? 0.0 : Math.abs(lag(bench, members.get(i), members.get(j)).correlation());
            }
            if (sum > most + 1.0e-9) {
                best = i;
                most = sum;
            }
        }
        return best;
    }

    private static Lag lag(Bench bench, Member first, Member second) {
        return Lag.between(first.signal, second.signal, bench.slowStepS(), LONGEST_S);
    }

    /** The middle lag; of an even number the earlier of the two, because channels come late, never early. */
    private static double lowerMedian(double[] lags) {
        double[] sorted = Robust.finite(lags);
        Arrays.sort(sorted);
        return sorted[(sorted.length - 1) / 2];
    }

    private static void move(Bench bench, Member member, double late, double correlation, boolean pair) {
        String which = pair ? " (with two channels only, which of them is off cannot be told; this is the later one)" : "";
        if (member.mayBeDropped && Math.abs(correlation) < GOOD_AFTER_MOVE) {
            member.channels.forEach(bench::drop);
            bench.remark(Calibrator.text(
                    "The %s is left out: it comes %.2f s late and even then correlates only %.2f with the others.",
                    member.words, late, Math.abs(correlation)));
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
