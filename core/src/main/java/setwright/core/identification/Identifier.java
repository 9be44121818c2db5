package setwright.core.identification;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.SteeringScale;
import setwright.core.numerics.EvenSample;
import setwright.core.replay.DrivenLap;

/*
 * Design note. Least squares with the prior as further residuals: what the laps do not tell keeps its prior, with its spread,
 * and is reported as not told. The covariance is that of the linearised problem at the solution (Laplace).
 */

/** Tightens what is known of a car by its laps. */
public final class Identifier {
    private static final double STEERING_TOLD = 0.1;
    /** A tenth of a normal distribution lies beyond this many standard deviations. */
    private static final double NORMAL_TENTH = 1.2816;

    private static final int ENOUGH_LAPS = 8;
    private static final int MOST_EVALUATIONS = 60;
    /**
     * A step that takes less than this off the sum of squares ends the search: a standard deviation costs 1, a tenth of one this. A test
     * fits ten times as closely and finds the same car.
     */
    private static final double SETTLED = 0.01;

    private Identifier() {}

    /**
     * Identifies a car from one or more stints in the same setup.
     *
     * @param stints  with their evidence; stints without a good lap free of gaps tell nothing
     * @param sheet   of the car as driven
     */
    public static FittedCar identify(List<TracedStint> stints, CarSheet sheet) {
        CarPrior prior = CarPrior.of(sheet);
        CarModel assumed = new CarAssembler(sheet).build(prior.middle());
        List<StintEvidence> parts = new ArrayList<>();
        List<DrivenLap> laps = new ArrayList<>();
        gather(stints, sheet, assumed, parts, laps, Integer.MAX_VALUE);
        if (parts.isEmpty()) {
            return new FittedCar(CarBelief.of(prior), new CarFit(List.of(), List.of()));
        }
        Evidence evidence = new Evidence(parts);
        CarBelief belief = fit(evidence, prior);
        return new FittedCar(
                belief,
                shown(
                        sheet,
                        prior,
                        belief,
                        evidence,
                        assumed,
                        laps,
                        stints.get(0).trace()));
    }

    /**
     * Returns what is known of a car after its laps, without what people are shown of it; arguments as above. Of each stint no more
     * than {@value #ENOUGH_LAPS} laps are looked at, evenly spread over it: what more of them would tell is lost in what
     * the car's model leaves out, and a diagnosis waits for it.
     */
    public static CarBelief believe(List<TracedStint> stints, CarSheet sheet) {
        CarPrior prior = CarPrior.of(sheet);
        List<StintEvidence> parts = new ArrayList<>();
        gather(stints, sheet, new CarAssembler(sheet).build(prior.middle()), parts, new ArrayList<>(), ENOUGH_LAPS);
        return parts.isEmpty() ? CarBelief.of(prior) : fit(new Evidence(parts), prior);
    }

    /** The same for one stint whose laps that can be replayed are known. */
    public static CarBelief believe(TracedStint stint, List<DrivenLap> laps, CarSheet sheet) {
        CarPrior prior = CarPrior.of(sheet);
        List<StintEvidence> parts = new ArrayList<>();
        gather(
                stint,
                EvenSample.of(laps, ENOUGH_LAPS),
                sheet,
                new CarAssembler(sheet).build(prior.middle()),
                parts,
                new ArrayList<>());
        return parts.isEmpty() ? CarBelief.of(prior) : fit(new Evidence(parts), prior);
    }

    private static void gather(
            List<TracedStint> stints,
            CarSheet sheet,
            CarModel assumed,
            List<StintEvidence> parts,
            List<DrivenLap> laps,
            int most) {
        for (TracedStint stint : stints) {
            List<DrivenLap> own = DrivenLap.of(stint.stint(), stint.trace(), stint.passes());
            gather(stint, EvenSample.of(own, most), sheet, assumed, parts, laps);
        }
    }

    private static void gather(
            TracedStint stint,
            List<DrivenLap> own,
            CarSheet sheet,
            CarModel assumed,
            List<StintEvidence> parts,
            List<DrivenLap> laps) {
        if (!own.isEmpty()) {
            laps.addAll(own);
            parts.add(new StintEvidence(
                    sheet,
                    own,
                    stint.stint().circuit().corners().size(),
                    DrivenLap.leastLateral(stint.trace()),
                    BrakeSplit.of(stint.stint(), stint.trace(), assumed)));
        }
    }

    /** Finds the parameters that fit evidence and prior best, and how far they may be off. */
    static CarBelief fit(Evidence evidence, CarPrior prior) {
        return fit(evidence, prior, SETTLED);
    }

    /** The same where another step ends the search. */
    static CarBelief fit(Evidence evidence, CarPrior prior, double settled) {
        double[] middle = prior.middle();
        double[] spread = prior.spread();
        LeastSquaresProblem problem = LeastSquaresFactory.create(
                new FitResiduals(evidence, middle, spread),
                new ArrayRealVector(evidence.size() + middle.length),
                new ArrayRealVector(middle.length),
                null,
                (iteration, previous, current) ->
                        iteration > 0 && Math.abs(square(previous.getCost()) - square(current.getCost())) < settled,
                MOST_EVALUATIONS,
                MOST_EVALUATIONS,
                true,
                null);
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer().optimize(problem);
        RealMatrix j = optimum.getJacobian();
        RealMatrix inverse =
                new LUDecomposition(j.transposeMultiply(j)).getSolver().getInverse();
        double[] found = new double[middle.length];
        double[][] covariance = new double[middle.length][middle.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = middle[i] + spread[i] * optimum.getPoint().getEntry(i);
            for (int k = 0; k < found.length; k++) {
                covariance[i][k] = 0.5 * (inverse.getEntry(i, k) + inverse.getEntry(k, i)) * spread[i] * spread[k];
            }
        }
        return new CarBelief(found, covariance);
    }

    private static CarFit shown(
            CarSheet sheet,
            CarPrior prior,
            CarBelief belief,
            Evidence evidence,
            CarModel assumed,
            List<DrivenLap> laps,
            HandlingTrace trace) {
        List<FittedValue> values = new ArrayList<>(
                FittedValues.of(sheet, CarBelief.of(prior), belief, sheet.downforce() != Downforce.NONE));
        UndersteerGradient gradient = UndersteerGradient.of(laps, trace.car().grip());
        values.add(understeer(gradient, FittedValues.assumedUndersteer(sheet, CarBelief.of(prior))));
        values.add(steering(sheet, trace.steering()));
        CarModel fitted = new CarAssembler(sheet).build(belief.middle());
        return new CarFit(
                values,
                FitPlots.of(
                        evidence,
                        assumed,
                        fitted,
                        belief.middle(),
                        laps,
                        trace.car().grip(),
                        gradient));
    }

    private static FittedValue understeer(UndersteerGradient found, double[] assumed) {
        boolean told = Double.isFinite(found.gradient());
        return new FittedValue(
                "understeer_gradient",
                "understeer gradient",
                "deg/g",
                FittedValues.perG(assumed[1]),
                FittedValues.perG(assumed[0]),
                FittedValues.perG(assumed[2]),
                FittedValues.perG(told ? found.gradient() : assumed[1]),
                FittedValues.perG(told ? found.low() : assumed[0]),
                FittedValues.perG(told ? found.high() : assumed[2]),
                told,
                told
                        ? "told by gentle cornering in " + found.laps()
                                + " laps, with the compliance of the steering in it"
                        : "needs three laps with gentle, steady cornering: a slow lap, or a skid pad");
    }

    private static FittedValue steering(CarSheet sheet, SteeringScale scale) {
        double ratio = sheet.steeringRatio();
        boolean told = Double.isFinite(scale.error()) && scale.error() < STEERING_TOLD;
        double spread = sheet.assumes("steering_ratio") ? 0.2 : 0.05;
        double width = told ? NORMAL_TENTH * scale.error() : NORMAL_TENTH * spread;
        double factor = told ? scale.factor() : 1.0;
        return new FittedValue(
                "steering_ratio",
                "steering ratio",
                "",
                ratio,
                ratio * (1.0 - NORMAL_TENTH * spread),
                ratio * (1.0 + NORMAL_TENTH * spread),
                ratio * factor,
                ratio * (factor - width),
                ratio * (factor + width),
                told,
                told
                        ? "told by gentle cornering at several speeds, with the compliance of the steering in it"
                        : "needs gentle cornering at several speeds");
    }

    private static double square(double value) {
        return value * value;
    }
}
