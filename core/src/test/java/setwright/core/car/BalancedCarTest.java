package setwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class BalancedCarTest {
    private static final double PEAK = BalancedCar.USUAL_PEAK_SLIP_RAD;

    private static BalancedCar car(DrivenAxle driven, double frontShare, double difference) {
        CarSheet sheet = Sheets.plain(driven, 1000.0, frontShare, 2.6, 12.0, 0.5);
        return new BalancedCar(sheet, new GripLimit(1.2, 0.0), PEAK, difference);
    }

    @Test
    void equalAxlesInSteadyCorneringAreNeutralWhereverTheWeightLies() {
        long seed = 20_261_125L;
        Random random = new Random(seed);
        double roundOff = 1.0e-12;
        for (int i = 0; i < 200; i++) {
            double share = 0.35 + 0.3 * random.nextDouble();
            double inward = 11.0 * random.nextDouble();
            double balance = car(DrivenAxle.REAR, share, 0.0).balance(40.0, inward, 0.0, 0.0, 0.0);
            assertThat(balance)
                    .as("seed %d, share %s, ay %s", seed, share, inward)
                    .isCloseTo(0.0, within(roundOff));
        }
    }

    @Test
    void turningInLoadsTheFront() {
        // an axle carries m a b r' / L of the yaw moment on top: source, single-track equations of motion
        BalancedCar.AxleUse steady = car(DrivenAxle.REAR, 0.5, 0.0).use(30.0, 5.0, 0.0, 0.0, 0.0);
        BalancedCar.AxleUse turningIn = car(DrivenAxle.REAR, 0.5, 0.0).use(30.0, 5.0, 0.0, 0.0, 1.0);

        assertThat(turningIn.frontUse()).isGreaterThan(steady.frontUse());
        assertThat(turningIn.rearUse()).isLessThan(steady.rearUse());
    }

    @Test
    void brakingUnloadsTheRearAndDriveUsesTheDrivenAxle() {
        double inward = 6.0;
        BalancedCar rear = car(DrivenAxle.REAR, 0.5, 0.0);
        BalancedCar front = car(DrivenAxle.FRONT, 0.6, 0.0);

        // signs of the four-wheel steady state with the published 1987 tyre set: braking at -4 m/s2 loosens every car;
        // a front-drive car pushes on the throttle, a rear-drive car slides at 4 m/s2 (common practice agrees)
        assertThat(rear.balance(30.0, inward, -4.0, -4.0, 0.0)).isNegative();
        assertThat(front.balance(30.0, inward, -4.0, -4.0, 0.0)).isNegative();
        assertThat(front.balance(30.0, inward, 3.0, 3.0, 0.0)).isPositive();
        assertThat(rear.balance(30.0, inward, 7.0, 7.0, 0.0)).isNegative();
    }

    @Test
    void theMeasuredDifferenceRisesTowardTheLimit() {
        BalancedCar pushing = car(DrivenAxle.REAR, 0.5, Math.toRadians(2.0));
        double low = pushing.balance(30.0, 3.0, 0.0, 0.0, 0.0) / 3.0;
        double high = pushing.balance(30.0, 10.5, 0.0, 0.0, 0.0) / 10.5;

        assertThat(low).isPositive();
        assertThat(high).isGreaterThan(1.3 * low);
    }

    @Test
    void theFitFindsTheDifferenceFromQuietCornering() {
        double difference = Math.toRadians(1.7);
        BalancedCar truth = car(DrivenAxle.REAR, 0.47, difference);
        long seed = 7L;
        Random random = new Random(seed);
        int n = 2_000;
        double[] speed = new double[n];
        double[] inward = new double[n];
        double[] along = new double[n];
        double[] balance = new double[n];
        for (int i = 0; i < n; i++) {
            speed[i] = 20.0 + 30.0 * random.nextDouble();
            inward[i] = 10.0 * random.nextDouble();
            balance[i] =
                    truth.balance(speed[i], inward[i], 0.0, 0.0, 0.0) + Math.toRadians(0.05) * random.nextGaussian();
        }

        BalancedCar fit = BalancedCarFit.fit(truth.sheet(), truth.grip(), speed, inward, along, along, along, balance);

        double sensorNoise = Math.toRadians(0.05);
        assertThat(fit.slipDifferenceRad()).as("seed %d", seed).isCloseTo(difference, within(sensorNoise));
    }
}
