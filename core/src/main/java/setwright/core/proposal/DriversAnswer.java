package setwright.core.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarBelief;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.BalanceBelief;
import setwright.core.judgement.Diagnosis;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.recording.Channel;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/*
 * Design note. A replay keeps the driver's use of the limiting axle and so knows of grip, drag and weight; it does not know that a car
 * out of balance is driven with more in hand. What an imbalance costs is known from elsewhere (ImbalanceCost), where the laps and the setup
 * say that there is one. Both are worth something, neither the whole: their two weights are a regression (Huber's) of the true lap times of 297
 * single changes of seven cars, made by another simulation in which a driver learns each car anew. Leaving each car out in turn they lie between
 * 0.34 and 0.61 and between 2.1 and 3.4; signs right 122 of 167 where the replay alone has 110 (docs/prediction.md).
 */

/** Turns a replayed change into what the driver makes of it: of the lap time and of the balance. */
public final class DriversAnswer {
    private static final double OF_REPLAY = 0.5;
    private static final double OF_BALANCE = 2.5;
    /**
     * What the answer itself leaves open, as a share of the lap: with it four fifths of 264 true lap times lie within their
     * intervals, where the run that all changes are compared with is allowed for (docs/prediction.md).
     */
    private static final double OPEN_SHARE = 0.0015;

    private final ImbalanceCost cost;
    private final Circuit circuit;
    private final Map<Pool, Map<Integer, Double>> shares;
    private final double openS;

    private DriversAnswer(ImbalanceCost cost, Circuit circuit, Map<Pool, Map<Integer, Double>> shares, double openS) {
        this.cost = cost;
        this.circuit = circuit;
        this.shares = shares;
        this.openS = openS;
    }

    /** Prepares the laps of a diagnosis. */
    public static DriversAnswer of(Diagnosis diagnosis) {
        BalanceBelief belief =
                BalanceBelief.of(diagnosis.passes(), diagnosis.grounds().standing());
        ImbalanceCost cost = new ImbalanceCost(
                belief, diagnosis.passes(), diagnosis.stint().goodLaps().size());
        Map<Pool, Map<Integer, Double>> shares = new HashMap<>();
        belief.pools().forEach(found -> shares.put(found.pool(), shares(found.pool(), diagnosis.passes())));
        double lapS = diagnosis.stint().goodLaps().stream()
                .mapToDouble(Lap::timeS)
                .average()
                .orElse(0.0);
        return new DriversAnswer(cost, diagnosis.stint().circuit(), shares, OPEN_SHARE * lapS);
    }

    /** Share of a pool's time that each of its corners has. */
    private static Map<Integer, Double> shares(Pool pool, List<CornerPass> passes) {
        Map<Integer, Double> shares = new HashMap<>();
        double sum = 0.0;
        for (CornerPass pass : passes) {
            double time = pool.takes(pass.speedClass())
                    ? pass.phase(pool.phase()).map(PhaseBalance::timeS).orElse(0.0)
                    : 0.0;
            shares.merge(pass.corner(), time, Double::sum);
            sum += time;
        }
        double whole = sum;
        shares.replaceAll((corner, time) -> whole > 0.0 ? time / whole : 0.0);
        return shares;
    }

    /** Returns the cost of an imbalance on these laps. */
    ImbalanceCost cost() {
        return cost;
    }

    /**
     * Returns the expected change of the lap time.
     *
     * @param replayedS  by the replay, s
     * @param gainS      by less imbalance, s, positive: quicker
     */
    static double seconds(double replayedS, double gainS) {
        return OF_REPLAY * replayedS - OF_BALANCE * gainS;
    }

    /** Gears and weight are felt in full whoever drives, as long as the balance stays. */
    private static boolean needsNoDriver(Prediction prediction) {
        return prediction.changes().stream()
                .allMatch(change -> SetupCatalogue.find(change.item())
                        .map(kind -> switch (kind.family()) {
                            case FINAL_DRIVE, GEAR, FUEL -> true;
                            default -> false;
                        })
                        .orElse(false));
    }

    /** Returns what changes would do to a diagnosed car, each by itself: replayed, with the driver's answer. */
    public static List<Prediction> foresee(
            Diagnosis diagnosis, CarSheet sheet, CarBelief car, List<List<SetupChange>> candidates) {
        return new Foresight(diagnosis, sheet, car).foresee(candidates);
    }

    /** Returns a replayed prediction with the driver's answer in it, corner by corner. */
    public Prediction to(Prediction replayed) {
        Prediction balanced = inBalance(replayed);
        return needsNoDriver(replayed) ? balanced : inTime(balanced, replayed);
    }

    private static Prediction inBalance(Prediction replayed) {
        LapEffect lap = replayed.lap();
        BalanceAnswer.Curves curves = BalanceAnswer.to(lap.balance(), lap.balanceLow(), lap.balanceHigh());
        return new Prediction(
                replayed.changes(),
                replayed.corners().stream()
                        .map(corner -> new CornerEffect(
                                corner.corner(), corner.speedClass(), BalanceAnswer.to(corner), corner.timeS()))
                        .toList(),
                replayed.phases().stream().map(BalanceAnswer::to).toList(),
                replayed.lapTimeS(),
                replayed.selectivity(),
                new LapEffect(lap.station(), curves.balance(), curves.low(), curves.high(), lap.timeS(), lap.speed()),
                replayed.reasons(),
                replayed.doubts());
    }

    /** The weights of the lap time were found with the balance as replayed. */
    private Prediction inTime(Prediction balanced, Prediction replayed) {
        List<PoolGain> gains = cost.gains(replayed, 1.0);
        double all = gains.stream().mapToDouble(PoolGain::gainS).sum();
        Map<Integer, Double> byCorner = new HashMap<>();
        for (PoolGain gain : gains) {
            shares.getOrDefault(gain.pool(), Map.of())
                    .forEach((corner, share) -> byCorner.merge(corner, share * gain.gainS(), Double::sum));
        }
        List<CornerEffect> corners = new ArrayList<>();
        for (CornerEffect corner : balanced.corners()) {
            corners.add(new CornerEffect(
                    corner.corner(),
                    corner.speedClass(),
                    corner.balance(),
                    answered(corner.timeS(), byCorner.getOrDefault(corner.corner(), 0.0), 0.0)));
        }
        return new Prediction(
                balanced.changes(),
                corners,
                balanced.phases(),
                answered(balanced.lapTimeS(), all, openS),
                balanced.selectivity(),
                lap(balanced.lap(), byCorner),
                balanced.reasons(),
                balanced.doubts());
    }

    /** Moves a replayed time, and widens its interval by what the answer leaves open. */
    private static Effect answered(Effect time, double gainS, double openS) {
        double central = seconds(time.central(), gainS);
        double deviation = Math.hypot(time.deviation(), openS);
        return deviation > 0.0
                ? Effect.normal(central, deviation)
                : new Effect(central, central, central, central > 0.0 ? 1.0 : central < 0.0 ? 0.0 : 0.5);
    }

    /** Time over the lap: what a corner's balance gives is laid evenly over the corner. */
    private LapEffect lap(LapEffect lap, Map<Integer, Double> gains) {
        int count = lap.station().size();
        double[] time = new double[count];
        for (int i = 0; i < count; i++) {
            double gained = 0.0;
            for (Corner corner : circuit.corners()) {
                gained += gains.getOrDefault(corner.number(), 0.0)
                        * done(corner, lap.station().get(i));
            }
            time[i] = seconds(lap.timeS().get(i), gained);
        }
        return new LapEffect(
                lap.station(), lap.balance(), lap.balanceLow(), lap.balanceHigh(), Channel.of(time), lap.speed());
    }

    /** Share of a corner that lies before a station. */
    private double done(Corner corner, double station) {
        double end = Math.min(corner.turnOutM(), circuit.line().lengthM());
        double length = Math.max(end - corner.turnInM(), 1.0);
        return Math.max(0.0, Math.min((station - corner.turnInM()) / length, 1.0));
    }
}
