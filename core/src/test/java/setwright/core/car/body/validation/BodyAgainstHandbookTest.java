package setwright.core.car.body.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyForces;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.body.Damper;
import setwright.core.car.sums.Gravity;

/**
 * The body at rest and swinging against handbook formulas (Milliken and Milliken, Race Car Vehicle Dynamics, SAE 1995, ch. 16
 * and 18; Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992, ch. 5; both from memory), worked outside the project.
 */
final class BodyAgainstHandbookTest {
    private static final double G = 9.81;
    private static final double RIGID_TYRE = 1.0e13;
    private static final double TRACK = 1.5;

    private static Damper damper(double slope) {
        return new Damper(slope, slope, slope, slope, 1.0);
    }

    private static Axle axle(double rollStiffness, double rollCentre, double unsprung, double anti) {
        double rate = 2.0 * rollStiffness / (TRACK * TRACK);
        return new Axle(rate, 0.0, RIGID_TYRE, damper(2000.0), 1.0e3, 0.0, rollCentre, anti, TRACK, unsprung, 0.30);
    }

    private static double forceShare(Body body) {
        return body.toRearM() / body.wheelbaseM();
    }

    private static BodyMotion cornering(Body body, double lateral) {
        BodyMotion motion = new BodyMotion(body);
        double front = body.massKg() * lateral * forceShare(body);
        motion.settle(new Action(0.0, lateral, 0.0, 0.0, front, body.massKg() * lateral - front));
        return motion;
    }

    /** Sprung 1000 kg at 0.55 m, 1.25 m behind the front axle of 2.6 m; unsprung 100 kg an axle at 0.30 m. */
    private static Body rolling() {
        double height = (1000.0 * 0.55 + 200.0 * 0.30) / 1200.0;
        double toFront = (1000.0 * 1.25 + 100.0 * 2.6) / 1200.0;
        return new Body(
                1200.0,
                toFront,
                2.6 - toFront,
                height,
                axle(40_000.0, 0.05, 100.0, 0.0),
                axle(30_000.0, 0.10, 100.0, 0.0),
                400.0,
                1500.0);
    }

    /** Roll 4.0949 degrees at 1 g, transfers 2271.85 and 1940.02 N, lean of the centre of gravity included. */
    @Test
    void rollAndTransfersAtOneG() {
        BodyMotion motion = cornering(rolling(), G);
        assertThat(Math.toDegrees(motion.rollRad())).isCloseTo(4.0949, within(1.0e-3));
        double front = 0.5 * (motion.loadN(1) - motion.loadN(0));
        double rear = 0.5 * (motion.loadN(3) - motion.loadN(2));
        assertThat(front).isCloseTo(2271.85, within(1.0e-4 * 2271.85));
        assertThat(rear).isCloseTo(1940.02, within(1.0e-4 * 1940.02));
        assertThat(front / (front + rear)).isCloseTo(0.53939, within(1.0e-4));
    }

    /** 1200 kg, h 0.5 m, L 2.6 m, a 1.25 m: 2263.85 N at 1 g; anti effects do not change it. */
    @ParameterizedTest
    @CsvSource({"0.0, 0.0", "0.3, 0.0", "0.2, 0.5"})
    void longitudinalTransferAtOneG(double antiDive, double antiSquat) {
        Body body = new Body(
                1200.0,
                1.25,
                1.35,
                0.5,
                axle(40_000.0, 0.05, 80.0, antiDive),
                axle(30_000.0, 0.10, 80.0, antiSquat),
                400.0,
                1500.0);
        assertThat(2.0 * body.staticFrontN()).isCloseTo(6112.38, within(6112.38 * 4.0e-4)); // g 9.81 there
        BodyMotion motion = new BodyMotion(body);
        motion.settle(new Action(-G, 0.0, 0.0, 0.0, 0.0, 0.0));
        assertThat(motion.loadN(0) + motion.loadN(1) - 2.0 * body.staticFrontN())
                .isCloseTo(2263.85, within(0.01));
        assertThat(motion.loadN(2) + motion.loadN(3) - 2.0 * body.staticRearN()).isCloseTo(-2263.85, within(0.01));
    }

    /** What links carry does not move the springs: pitch falls by the anti share. */
    @Test
    void antiDiveKeepsTheFrontUp() {
        double without = dive(0.0);
        assertThat(dive(0.2957)).isCloseTo((1.0 - 0.2957) * without, within(1.0e-9));
        assertThat(dive(1.0)).isCloseTo(0.0, within(1.0e-9));
    }

    private static double dive(double antiDive) {
        Body body = new Body(
                1200.0,
                1.25,
                1.35,
                0.5,
                axle(40_000.0, 0.05, 80.0, antiDive),
                axle(30_000.0, 0.10, 80.0, 0.0),
                400.0,
                1500.0);
        BodyMotion motion = new BodyMotion(body);
        motion.settle(new Action(-G, 0.0, 0.0, 0.0, 0.0, 0.0));
        return motion.riseFrontM();
    }

    /** Law of statics: whatever the car does, its wheels carry its weight, the downforce and what lifts it. */
    @Test
    void loadsAddUp() {
        Random random = new Random(20240607L);
        double[] loads = new double[4];
        double[] sums = new double[3];
        for (int k = 0; k < 500; k++) {
            Body body = random(random);
            Action action = action(random, body);
            double[] attitude = {
                0.02 * random.nextGaussian(), 0.01 * random.nextGaussian(), 0.02 * random.nextGaussian()
            };
            double[] rates = {0.1 * random.nextGaussian(), 0.1 * random.nextGaussian(), 0.2 * random.nextGaussian()};
            new BodyForces(body).sum(attitude, rates, action, loads, sums);
            double weight = body.massKg() * Gravity.STANDARD_MPS2 + action.liftFrontN() + action.liftRearN();
            // the sum of the body is its mass times its acceleration upward
            assertThat(sum(loads)).isCloseTo(weight + sums[0], within(1.0e-6 * weight));
            BodyMotion motion = new BodyMotion(body);
            motion.settle(action);
            double[] atRest = {motion.loadN(0), motion.loadN(1), motion.loadN(2), motion.loadN(3)};
            if (Math.abs(action.lateralMps2()) < 15.0) {
                assertThat(sum(atRest)).isCloseTo(weight, within(1.0e-6 * weight));
            }
        }
    }

    /** A wheel in the air: the sum stays, and so does the moment about the ground. */
    @Test
    void aLiftedWheelLeavesSumAndMoment() {
        Body body = rolling();
        double[] loads = {1200.0, 4800.0, -300.0, 6000.0};
        double sum = sum(loads);
        double moment = 0.5 * TRACK * (loads[1] - loads[0] + loads[3] - loads[2]);
        body.lift(loads);
        assertThat(loads).containsExactly(900.0, 5100.0, 0.0, 5700.0);
        assertThat(sum(loads)).isEqualTo(sum);
        assertThat(0.5 * TRACK * (loads[1] - loads[0] + loads[3] - loads[2])).isEqualTo(moment);
    }

    /** Corner of 250 kg on 16 000 N/m and a tyre of 200 000 N/m: 1.2252 Hz; damping ratio 0.7 of what the tyre leaves. */
    @Test
    void heaveSwingsAtTheRideFrequency() {
        double ride = 16_000.0 * 200_000.0 / 216_000.0;
        assertThat(Math.sqrt(ride / 250.0) / (2.0 * Math.PI)).isCloseTo(1.2252, within(1.0e-4));
        Axle axle = new Axle(16_000.0, 0.0, 200_000.0, damper(0.0), 1.0e3, 0.0, 0.0, 0.0, TRACK, 0.0, 0.0);
        Body body = new Body(1000.0, 1.3, 1.3, 0.0, axle, axle, 400.0, 1500.0);
        BodyMotion motion = new BodyMotion(body);
        motion.settle(new Action(0.0, 0.0, 500.0, 500.0, 0.0, 0.0));
        double step = 1.0e-5;
        double time = 0.0;
        int crossings = 0;
        double first = 0.0;
        double last = 0.0;
        double before = motion.riseFrontM();
        while (crossings < 9) {
            motion.step(step, new Action(0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
            time += step;
            if (before * motion.riseFrontM() < 0.0) {
                crossings++;
                first = crossings == 1 ? time : first;
                last = time;
            }
            before = motion.riseFrontM();
        }
        assertThat(4.0 / (last - first)).isCloseTo(1.2252, within(1.0e-3));
    }

    /**
     * More pitch damping brings load sooner: the damper presses on the tyre at once (equation of pitch, front load change
     * {@code (m a h - I p'') / L}). Paddock lore says the reverse.
     */
    @Test
    void pitchDampingBringsLoadSooner() {
        double weak = frontLoadAfter(0.05, 1000.0);
        double middle = frontLoadAfter(0.05, 3000.0);
        double strong = frontLoadAfter(0.05, 6000.0);
        assertThat(middle).isGreaterThan(weak);
        assertThat(strong).isGreaterThan(middle);
        // in the end all is the same
        assertThat(frontLoadAfter(10.0, 6000.0)).isCloseTo(frontLoadAfter(10.0, 1000.0), within(1.0));
    }

    private static double frontLoadAfter(double seconds, double damping) {
        Axle axle = new Axle(30_000.0, 0.0, 250_000.0, damper(damping), 1.0e3, 0.0, 0.0, 0.0, TRACK, 0.0, 0.0);
        BodyMotion motion = new BodyMotion(new Body(1200.0, 1.3, 1.3, 0.5, axle, axle, 400.0, 1500.0));
        motion.settle(new Action(0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        for (int k = 0; k < Math.round(seconds / 0.001); k++) {
            motion.step(0.001, new Action(-6.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        }
        return motion.loadN(0) + motion.loadN(1);
    }

    private static Body random(Random random) {
        double toFront = 1.0 + random.nextDouble();
        return new Body(
                800.0 + 700.0 * random.nextDouble(),
                toFront,
                2.7 - toFront,
                0.3 + 0.3 * random.nextDouble(),
                random(random, random.nextDouble()),
                random(random, random.nextDouble()),
                400.0,
                1500.0);
    }

    private static Axle random(Random random, double share) {
        Damper damper = new Damper(
                4000.0 * random.nextDouble(),
                2000.0 * random.nextDouble(),
                6000.0 * random.nextDouble(),
                3000.0 * random.nextDouble(),
                0.05);
        return new Axle(
                20_000.0 + 100_000.0 * random.nextDouble(),
                60_000.0 * random.nextDouble(),
                250_000.0,
                damper,
                0.01 + 0.05 * random.nextDouble(),
                100_000.0 * random.nextDouble(),
                0.3 * (share - 0.2),
                0.6 * share,
                1.4 + 0.3 * random.nextDouble(),
                60.0 + 40.0 * random.nextDouble(),
                0.3);
    }

    private static Action action(Random random, Body body) {
        double lateral = 6.0 * random.nextGaussian();
        double front = body.massKg() * lateral * (0.3 + 0.4 * random.nextDouble());
        return new Action(
                4.0 * random.nextGaussian(),
                lateral,
                5000.0 * random.nextDouble(),
                5000.0 * random.nextDouble(),
                front,
                body.massKg() * lateral - front);
    }

    private static double sum(double[] values) {
        double sum = 0.0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
