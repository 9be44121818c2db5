package setwright.core.technique;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import setwright.core.judgement.Yardstick;
import setwright.core.numerics.Robust;
import setwright.core.technique.Question.Here;
import setwright.core.technique.TechniqueLever.AtCorner;
import setwright.core.technique.TechniqueLever.Effect;

/** Makes a lever of what the passes answered. */
final class LeverBuilder {
    /** What a driver does in a quarter of his own passes, he can do. */
    private static final double BETTER = 0.25;
    /** Half of what varies must be driving and not reading, else nothing can be told from it. */
    private static final double LEAST_RELIABLE = 0.5;

    private static final int MOST_LAPS = 3;
    /** A lap does it when it lies that far to the good side in the mean of the corners, in deviations of the lever. */
    private static final double CLEARLY = 0.3;

    /** What is worth a driver's attention: a tenth of a typical setup change, a fiftieth of the pedal, five thousandths (our choice). */
    private static final double LEAST_RAD = 0.1 * Yardstick.BALANCE_RAD;

    private static final double LEAST_LIFT = 0.02;
    private static final double LEAST_S = 0.005;

    private LeverBuilder() {}

    private static double least(TechniqueLever.Response response) {
        return switch (response) {
            case BALANCE, SLIDE -> LEAST_RAD;
            case LIFT -> LEAST_LIFT;
            case TIME -> LEAST_S;
        };
    }

    /**
     * Builds it.
     *
     * @param adjusted    level of false discoveries at which it is named
     * @param falseShare  that is borne
     * @return empty when no corner has the lever, or the laps do not even say which way to move
     */
    static Optional<TechniqueLever> build(Question question, double adjusted, double falseShare) {
        double side = question.side();
        List<AtCorner> places = new ArrayList<>();
        double reliability = question.slope()
                .map(found -> found.reliability(question.lever()))
                .orElse(0.0);
        for (Here here : question.corners()) {
            place(question, here, side, reliability).ifPresent(places::add);
        }
        if (places.isEmpty() || side == 0.0) {
            return Optional.empty();
        }
        boolean shown = question.slope()
                .filter(found -> question.direction().admits(found.slope()))
                .isPresent();
        boolean varies = reliability >= LEAST_RELIABLE;
        boolean tested = shown && varies && adjusted <= falseShare;
        double move = move(question, places, tested ? reliability : Double.NaN);
        // what is clear of chance but too small to feel is no proof of anything worth doing
        Optional<Effect> effect = question.slope()
                .filter(found -> tested)
                .map(found -> effect(found.slope(), found.low(), found.high(), move / reliability))
                .filter(found -> -found.change() >= least(question.response()));
        double strength = shown
                ? reliability
                        * Math.max(
                                0.0,
                                2.0 * question.slope().map(PooledSlope::sure).orElse(0.5) - 1.0)
                : 0.0;
        List<Integer> laps = laps(question.corners(), side);
        return Optional.of(new TechniqueLever(
                question.rank(),
                question.finding(),
                question.fault(),
                question.lever(),
                move,
                question.response(),
                question.firstStep(),
                effect,
                places,
                laps,
                laps(question.corners(), -side),
                adjusted,
                strength,
                effect.isEmpty(),
                varies));
    }

    private static Optional<AtCorner> place(Question question, Here here, double side, double reliability) {
        double[] values = Robust.finite(here.values());
        if (values.length < 2) {
            return Optional.empty();
        }
        double usual = Robust.median(values);
        double better = Robust.quantile(values, side > 0.0 ? 1.0 - BETTER : BETTER);
        return Optional.of(new AtCorner(
                here.corner(),
                usual,
                better,
                question.slope().filter(found -> reliability >= LEAST_RELIABLE).stream()
                        .flatMap(found -> found.corners().stream())
                        .filter(at -> at.own().corner() == here.corner())
                        .findFirst()
                        .map(at -> effect(
                                at.slope(),
                                at.slope() - 1.96 * at.error(),
                                at.slope() + 1.96 * at.error(),
                                (better - usual) / reliability))));
    }

    private static Effect effect(double slope, double low, double high, double move) {
        double one = move * low;
        double other = move * high;
        return new Effect(move * slope, Math.min(one, other), Math.max(one, other));
    }

    /** To the better quarter of the driver's own passes; less where the slope says that less takes the problem away. */
    private static double move(Question question, List<AtCorner> places, double reliability) {
        double own = Robust.median(
                places.stream().mapToDouble(at -> at.better() - at.usual()).toArray());
        if (Double.isNaN(reliability) || question.response() == TechniqueLever.Response.TIME) {
            return own;
        }
        double size = Robust.median(question.corners().stream()
                .mapToDouble(here -> Robust.median(here.sizes()))
                .toArray());
        double slope = question.slope().map(PooledSlope::slope).orElse(Double.NaN) / reliability;
        double needed = Math.abs(size / slope);
        return size > 0.0 && needed < Math.abs(own) ? Math.signum(own) * needed : own;
    }

    /** Laps that lie to one side of the driver's usual in the mean of the corners, farthest first. */
    private static List<Integer> laps(List<Here> corners, double side) {
        Map<Integer, List<Double>> byLap = new TreeMap<>();
        for (Here here : corners) {
            double usual = Robust.median(here.values());
            double spread = Robust.qn(here.values());
            if (!(spread > 0.0)) {
                continue;
            }
            IntStream.range(0, here.laps().length)
                    .filter(i -> Double.isFinite(here.values()[i]))
                    .forEach(i -> byLap.computeIfAbsent((int) here.laps()[i], lap -> new ArrayList<>())
                            .add(side * (here.values()[i] - usual) / spread));
        }
        record Lap(int number, double mean) {}
        return byLap.entrySet().stream()
                .map(entry -> new Lap(
                        entry.getKey(),
                        entry.getValue().stream()
                                .mapToDouble(Double::doubleValue)
                                .average()
                                .orElse(0.0)))
                .filter(lap -> lap.mean() > CLEARLY)
                .sorted(Comparator.comparingDouble(Lap::mean).reversed())
                .limit(MOST_LAPS)
                .map(Lap::number)
                .toList();
    }
}
