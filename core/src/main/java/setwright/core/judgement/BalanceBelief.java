package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.replay.Pool;
import setwright.core.standing.SetupStanding;

/*
 * Design note. Two witnesses are heard. The setup says what its unusual items do on these laps (SetupStanding), with a spread. The
 * laps say by how much the balance angle exceeds the reference, but what a healthy car of this kind would show there is known
 * to half a degree only, and that doubt is common to all corners: so the laps speak loudest where one phase or one end of the
 * speeds differs from the rest, or where the excess is far beyond any doubt. Both are normal; their product is the belief.
 */

/** What is believed of the balance beyond a healthy car's, by phase and speed class. */
public final class BalanceBelief {
    static final List<Phase> PHASES = List.of(Phase.ENTRY, Phase.MID, Phase.EXIT);

    /** What is believed where neither setup nor laps tell. */
    static final Estimate UNKNOWN = new Estimate(0.0, Reference.UNKNOWN_RAD);

    /** Below it a corner says nothing about the limit. */
    private static final double LEAST_SHAPE = 0.1;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final List<BalanceCell> cells;
    private final RealVector mean;
    private final RealMatrix covariance;
    private final Optional<MeasuredBalance> measured;

    /**
     * An angle.
     *
     * @param meanRad       expected, rad; positive: understeer
     * @param deviationRad  standard deviation, rad
     */
    public record Estimate(double meanRad, double deviationRad) {
        /** Returns the probability that its size is above some value, with its sign. */
        public double beyond(double leastRad) {
            return NORMAL.cumulativeProbability((Math.abs(meanRad) - leastRad) / deviationRad);
        }

        /**
         * Returns what is left after an independent measurement of the same angle. Where the two point opposite ways and lie
         * farther apart than their doubts allow, the doubt that is left grows by as much (R. T. Birge, Phys. Rev. 40 (1932) 207,
         * value from memory): one of them is wrong, and nobody knows which.
         */
        public Estimate after(double measuredRad, double spreadRad) {
            double variance = deviationRad * deviationRad + spreadRad * spreadRad;
            double gain = deviationRad * deviationRad / variance;
            boolean opposed = measuredRad * meanRad < 0.0;
            double apart = opposed ? Math.max(1.0, Math.abs(measuredRad - meanRad) / Math.sqrt(variance)) : 1.0;
            return new Estimate(meanRad + gain * (measuredRad - meanRad), apart * Math.sqrt(1.0 - gain) * deviationRad);
        }
    }

    /**
     * What is believed of one phase in one class of corners.
     *
     * @param pool      phase and class
     * @param estimate  of the balance there
     */
    public record PoolEstimate(Pool pool, Estimate estimate) {}

    private BalanceBelief(
            List<BalanceCell> cells, RealVector mean, RealMatrix covariance, Optional<MeasuredBalance> measured) {
        this.cells = List.copyOf(cells);
        this.mean = mean;
        this.covariance = covariance;
        this.measured = measured;
    }

    /** Returns the belief after setup and laps were looked at. */
    public static BalanceBelief of(List<CornerPass> passes, SetupStanding standing) {
        List<BalanceCell> cells = BalanceCell.of(passes);
        int n = cells.size();
        RealVector prior = new ArrayRealVector(n);
        RealVector measured = new ArrayRealVector(n);
        RealMatrix doubt = new Array2DRowRealMatrix(Math.max(n, 1), Math.max(n, 1));
        RealMatrix noise = new Array2DRowRealMatrix(Math.max(n, 1), Math.max(n, 1));
        Reference reference = Reference.of(standing);
        Optional<MeasuredBalance> places =
                reference == Reference.BASELINE ? Optional.of(MeasuredBalance.of(passes, standing)) : Optional.empty();
        for (int i = 0; i < n; i++) {
            BalanceCell one = cells.get(i);
            prior.setEntry(i, standing.balanceRad(one.pool()));
            measured.setEntry(i, one.excess() - reference.healthyRad() * one.shape());
            for (int k = 0; k < n; k++) {
                BalanceCell other = cells.get(k);
                double shapes = one.shape() * other.shape();
                doubt.setEntry(
                        i, k, standing.covarianceRad2(one.pool(), other.pool()) + reference.unlistedRad2(shapes));
                noise.setEntry(i, k, reference.commonRad2(shapes));
            }
            doubt.addToEntry(i, i, reference.unlistedCellRad2());
            noise.addToEntry(
                    i, i, reference.cellRad2(one.errorRad()) + one.referenceDoubtRad() * one.referenceDoubtRad());
        }
        if (n == 0) {
            return new BalanceBelief(cells, prior, doubt, places);
        }
        RealMatrix gain =
                doubt.multiply(new LUDecomposition(doubt.add(noise)).getSolver().getInverse());
        return new BalanceBelief(
                cells, prior.add(gain.operate(measured.subtract(prior))), doubt.subtract(gain.multiply(doubt)), places);
    }

    /** Returns the balance of a phase in some corners, weighted with time and lateral acceleration; empty when none has it. */
    public Optional<Estimate> at(Phase phase, SpeedRange range) {
        return measured.isPresent()
                ? measured.get().at(range.pool(phase))
                : pooled(cell -> cell.phase() == phase && range.takes(cell.speed()));
    }

    /** Tells whether it rests on the same car in good order rather than on a reckoned one. */
    boolean measured() {
        return measured.isPresent();
    }

    /** Returns the belief phase by phase and class by class, where the laps have both; evened out between them, as one change acts on all. */
    public List<PoolEstimate> pools() {
        return IntStream.range(0, cells.size())
                .mapToObj(i -> new PoolEstimate(
                        cells.get(i).pool(), new Estimate(mean.getEntry(i), Math.sqrt(covariance.getEntry(i, i)))))
                .toList();
    }

    /** Returns the balance of all phases in all corners together; empty when none can be judged. */
    Optional<Estimate> everywhere() {
        return pooled(cell -> true);
    }

    /** Returns the belief in every place that can be judged, in driving order. */
    List<BelievedLevel> levels() {
        List<BelievedLevel> levels = new ArrayList<>();
        for (Phase phase : PHASES) {
            for (SpeedRange range : SpeedRange.values()) {
                at(phase, range)
                        .map(estimate -> new BelievedLevel(
                                phase, range, estimate.meanRad(), estimate.deviationRad(), excessRad(phase, range)))
                        .ifPresent(levels::add);
            }
        }
        return levels;
    }

    private Optional<Estimate> pooled(Predicate<BalanceCell> wanted) {
        RealVector weights = new ArrayRealVector(cells.size());
        double sum = 0.0;
        for (int i = 0; i < cells.size(); i++) {
            if (wanted.test(cells.get(i))) {
                weights.setEntry(i, cells.get(i).weight());
                sum += cells.get(i).weight();
            }
        }
        if (sum == 0.0) {
            return Optional.empty();
        }
        RealVector shares = weights.mapDivide(sum);
        return Optional.of(new Estimate(
                shares.dotProduct(mean), Math.sqrt(Math.max(shares.dotProduct(covariance.operate(shares)), 1.0e-12))));
    }

    /**
     * Returns what the balance of some corners would be if the tyres worked as hard there as anywhere, rad, so that corners that are
     * taken easily can be compared with others; NaN when none has the phase.
     */
    double atTheLimit(Phase phase, SpeedRange range) {
        double sum = 0.0;
        double shapes = 0.0;
        for (int i = 0; i < cells.size(); i++) {
            BalanceCell cell = cells.get(i);
            if (cell.phase() == phase && range.takes(cell.speed())) {
                sum += cell.weight() * mean.getEntry(i);
                shapes += cell.weight() * Math.max(cell.shape(), LEAST_SHAPE);
            }
        }
        return sum / shapes;
    }

    /** Returns the measured excess over the reference in a phase of some corners, rad; NaN when none has it. */
    double excessRad(Phase phase, SpeedRange range) {
        return shown(phase, range, RepeatedBalance::rad, BalanceCell::excess);
    }

    /** Returns how far the reference may be off there for being driven otherwise, rad; NaN when none has it. */
    double referenceDoubtRad(Phase phase, SpeedRange range) {
        return shown(phase, range, RepeatedBalance::otherwiseRad, BalanceCell::referenceDoubtRad);
    }

    private double shown(
            Phase phase,
            SpeedRange range,
            ToDoubleFunction<RepeatedBalance> ofPlace,
            ToDoubleFunction<BalanceCell> ofCell) {
        if (measured.isEmpty()) {
            return mean(phase, range, ofCell);
        }
        Optional<RepeatedBalance> place = measured.get().shown(range.pool(phase));
        return place.isPresent() ? ofPlace.applyAsDouble(place.get()) : Double.NaN;
    }

    private double mean(Phase phase, SpeedRange range, ToDoubleFunction<BalanceCell> value) {
        double sum = 0.0;
        double weights = 0.0;
        for (BalanceCell cell : cells) {
            if (cell.phase() == phase && range.takes(cell.speed())) {
                sum += cell.weight() * value.applyAsDouble(cell);
                weights += cell.weight();
            }
        }
        return sum / weights;
    }
}
