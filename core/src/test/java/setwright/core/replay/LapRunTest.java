package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Cornering;
import setwright.core.car.model.Moment;
import setwright.core.car.model.Parameter;
import setwright.core.car.sums.Gravity;

final class LapRunTest {
    private static final double LEAST_LATERAL = 1.5;
    private static final int EACH = 60;

    private final CarModel car = Moments.car();
    /** On the brake into the corner, through it, and out of it on the throttle; then a straight. */
    private final DrivenLap lap = Moments.lap(moments());

    private static List<Moment> moments() {
        List<Moment> moments = new ArrayList<>();
        moments.addAll(Collections.nCopies(EACH, Moments.moment(30.0, -5.0, 100.0, 0.0, 0.4)));
        moments.addAll(Collections.nCopies(EACH, Moments.moment(28.0, 0.0, 70.0, 0.3, 0.0)));
        moments.addAll(Collections.nCopies(EACH, Moments.moment(30.0, 3.0, 100.0, 0.8, 0.0)));
        moments.addAll(Collections.nCopies(EACH, Moments.moment(40.0, 1.0, Double.POSITIVE_INFINITY, 1.0, 0.0)));
        return moments;
    }

    @Test
    void theSameCarHasNoMarginAndTheSameBalance() {
        double[] scale = margins(car);
        assertThat(Arrays.stream(scale)).allMatch(value -> value == 0.0);
        for (double change : balances(car, new double[lap.size()])) {
            assertThat(Double.isNaN(change) || change == 0.0).isTrue();
        }
    }

    @Test
    void onStraightsThereIsNoBalance() {
        LapRun run = LapRun.of(car, lap, LEAST_LATERAL);
        assertThat(run.balance(3 * EACH + 20)).isNaN();
        assertThat(run.balance(EACH + 20)).isNotNaN();
        assertThat(run.use(3 * EACH + 20)).as("tyres do not limit").isNaN();
        assertThat(run.use(EACH + 20)).isBetween(LapRun.LEAST_USE, 1.0);
    }

    @Test
    void brakeBiasActsOnTheBrakeOnly() {
        double[] change = balances(Moments.withBrakes(car, car.brakes().frontShare() + 0.04), new double[lap.size()]);
        for (int k = 0; k < lap.size(); k += 2) {
            if (k < EACH) {
                assertThat(change[k])
                        .as("moment %d: the front gives up grip", k)
                        .isPositive();
            } else if (k < 3 * EACH) {
                assertThat(change[k]).as("moment %d", k).isZero();
            }
        }
    }

    @Test
    void aCarWithMoreGripOnItsLimitingAxleMayBeDrivenHarder() {
        CarModel grippier = new CarAssembler(Sheets.adjustable()).build(moreGrip());
        double[] scale = margins(grippier);
        for (int k = 0; k < 3 * EACH; k++) {
            // a hundredth more grip for the same load; downforce, which does not grow, takes a part of it away again
            assertThat(scale[k]).as("moment %d", k).isBetween(0.005, 0.0125);
        }
    }

    @Test
    void theLimitingAxleCountsMost() {
        Cornering cornering = new Cornering(car);
        cornering.at(lap.moments().get(EACH), LapLoads.of(car, lap), 4 * EACH, 1.0);
        double most = Math.max(cornering.frontUse(), cornering.rearUse());
        // power mean of eighth order of two: between 2^(-1/8) of the greater and the greater
        assertThat(LapRun.limiting(cornering)).isBetween(Math.pow(0.5, 0.125) * most, most);
    }

    @Test
    void wheelLoadsAddUpToWeightAndDownforceWhereNothingMoves() {
        double[] loads = LapLoads.of(car, lap);
        int k = 2 * EACH - 1;
        double sum = loads[4 * k] + loads[4 * k + 1] + loads[4 * k + 2] + loads[4 * k + 3];
        double weight = car.body().massKg() * Gravity.STANDARD_MPS2;
        double lift = car.liftFrontN(28.0, 0.0, 0.0) + car.liftRearN(28.0, 0.0, 0.0);
        // the ride height under load is not that at rest: at most a fifth of the downforce comes and goes with it
        assertThat(sum).isBetween(weight + 0.8 * lift, weight + 1.2 * lift);
    }

    private static double[] moreGrip() {
        double[] parameters = CarPrior.of(Sheets.adjustable()).middle();
        parameters[Parameter.GRIP.index()] += 0.01;
        return parameters;
    }

    private double[] margins(CarModel changed) {
        LapRun run = LapRun.of(car, lap, LEAST_LATERAL).prepared();
        double[] scale = new double[lap.size()];
        run.margins(changed, run.loadsOf(changed), scale);
        return scale;
    }

    private double[] balances(CarModel changed, double[] faster) {
        LapRun run = LapRun.of(car, lap, LEAST_LATERAL).prepared();
        double[] change = new double[lap.size()];
        run.balances(changed, run.loadsOf(changed), faster, change);
        return change;
    }
}
