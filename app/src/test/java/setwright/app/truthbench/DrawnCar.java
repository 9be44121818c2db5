package setwright.app.truthbench;

import java.util.Random;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarPrior;
import setwright.core.simulation.fault.BalancedTruth;

/** Draws what is true of a car and not on its sheet. */
final class DrawnCar {
    /** A car further from its sheet than that in any one thing has a wrong sheet. */
    private static final double MOST_SPREADS = 1.5;

    private static final int MOST_TRIES = 40;

    private DrawnCar() {}

    /** Returns the true values of a car that is balanced in the setup of its sheet, by index of the parameter. */
    static double[] balanced(CarSheet sheet, Random random) {
        CarPrior prior = CarPrior.of(sheet);
        for (int i = 0; i < MOST_TRIES; i++) {
            double[] values = prior.middle();
            double[] spread = prior.spread();
            for (int k = 0; k < values.length; k++) {
                double z = random.nextGaussian();
                values[k] += spread[k] * Math.max(-MOST_SPREADS, Math.min(z, MOST_SPREADS));
            }
            BalancedTruth truth = BalancedTruth.balance(sheet, values);
            if (truth.isBalanced()) {
                return truth.parameters();
            }
        }
        throw new IllegalStateException("no drawn car could be balanced in " + MOST_TRIES + " tries");
    }
}
