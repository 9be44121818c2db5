package setwright.core.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;
import setwright.core.numerics.LocalPolynomial;

/** Motions whose distribution of speeds has a closed form. */
class DamperReaderTest {
    private static final CarSheet SHEET = Sheets.with(List.of());
    private static final double FRONT_RATIO = 0.9;
    private static final double SIZE_M = 0.012;
    private static final double HERTZ = 1.7;
    private static final double KNEE_MPS = 0.05;

    /** All wheels move alike, the rear by half; the car slows in step with its dive. */
    private static Runs moving(double rateHz, double side, DoubleUnaryOperator bump) {
        Runs runs = new Runs(rateHz, 60.0, 6).forward(t -> -300.0 * bump.applyAsDouble(t));
        for (Wheel wheel : Wheel.values()) {
            runs.with(wheel.of("SUSPENSION"), t -> side * (wheel.isFront() ? 1.0 : 0.5) * bump.applyAsDouble(t));
        }
        return runs;
    }

    private static double wave(double t) {
        return SIZE_M * Math.sin(2.0 * Math.PI * HERTZ * t);
    }

    private static ChassisEvidence read(Runs runs) {
        ChassisEvidence.Builder into = new ChassisEvidence.Builder();
        DamperReader.read(runs.motion(), SHEET, into);
        return into.done();
    }

    /** The speed of a sinusoid has an arcsine distribution: P(|v| < k) = 2/pi asin(k/V), whichever way travel counts. */
    @Test
    void aSinusoidHasAnArcsineDistribution() {
        double greatest = FRONT_RATIO * SIZE_M * 2.0 * Math.PI * HERTZ;
        double slow = 2.0 / Math.PI * Math.asin(KNEE_MPS / greatest);
        for (double side : new double[] {1.0, -1.0}) {
            DamperMotion found =
                    read(moving(200.0, side, DamperReaderTest::wave)).dampers().orElseThrow();
            DamperMotion.OfWheel front = found.wheels().get(0);
            // what the window takes from the wave, and a sample more or less on either side of an edge
            double derivative = 0.01;
            assertThat(front.lowBump().mean() + front.lowRebound().mean()).isCloseTo(slow, within(derivative));
            assertThat(front.highBump().mean()).isCloseTo(0.5 * (1.0 - slow), within(derivative));
            assertThat(front.rmsMps().mean()).isCloseTo(greatest * Math.sqrt(0.5), within(derivative * greatest));
            assertThat(front.symmetric()).isTrue();
            double sum = 0.0;
            for (int bin = 0; bin < front.shares().size(); bin++) {
                double low = bin == 0 ? -1.0 : edge(found, bin - 1, greatest);
                double high = bin == front.shares().size() - 1 ? 1.0 : edge(found, bin, greatest);
                assertThat(front.shares().get(bin))
                        .as("bin %d", bin)
                        .isCloseTo((Math.asin(high) - Math.asin(low)) / Math.PI, within(2.0 * derivative));
                sum += front.shares().get(bin);
            }
            assertThat(sum).isCloseTo(1.0, within(1.0e-12));
        }
    }

    private static double edge(DamperMotion found, int edge, double greatest) {
        return Math.max(-1.0, Math.min(1.0, found.edgesMps().get(edge) / greatest));
    }

    /** Two thirds of the time in slow bump, one third in rebound that is twice as fast. */
    @Test
    void reboundThatIsFasterTakesLessTime() {
        DoubleUnaryOperator saw = t -> {
            double phase = t % 0.9 / 0.9;
            return 0.03 * (phase < 2.0 / 3.0 ? 1.5 * phase : 3.0 - 3.0 * phase);
        };
        DamperMotion.OfWheel front =
                read(moving(250.0, 1.0, saw)).dampers().orElseThrow().wheels().get(0);
        // six samples of each of the two corners of the saw are rounded off by the window
        assertThat(front.lean().mean()).isCloseTo(1.0 / 3.0, within(0.03));
        assertThat(front.symmetric()).isFalse();
        assertThat(front.highRebound().mean()).isGreaterThan(front.highBump().mean());
    }

    @Test
    void frontAndRearAndTheSidesAreHeldAgainstEachOther() {
        Random random = new Random(7L);
        double[] size = random.doubles(6, 0.9, 1.1).toArray();
        Runs runs = moving(200.0, 1.0, DamperReaderTest::wave)
                .with(Wheel.FRONT_LEFT.of("SUSPENSION"), t -> 1.5 * size[(int) (t / 60.0)] * wave(t));
        List<DamperMotion.Contrast> contrasts =
                read(runs).dampers().orElseThrow().contrasts();
        double rms = FRONT_RATIO * SIZE_M * 2.0 * Math.PI * HERTZ * Math.sqrt(0.5);
        assertThat(contrasts.get(0).rmsMps().low()).isPositive();
        assertThat(contrasts.get(0).rmsMps().low()).isLessThan(0.5 * rms);
        assertThat(contrasts.get(0).rmsMps().high()).isGreaterThan(0.5 * rms);
        assertThat(contrasts.get(1).rmsMps().mean()).isCloseTo(0.0, within(1.0e-9));
        assertThat(contrasts.get(2).rmsMps().low()).isPositive();
    }

    /** Twelve samples a second know nothing of a body at 4 Hz, fifty nothing of a wheel that hops at 15. */
    @Test
    void aSlowLoggerSaysWhatItCannotCarry() {
        ChassisEvidence slow = read(moving(12.0, 1.0, DamperReaderTest::wave));
        assertThat(slow.dampers()).isEmpty();
        assertThat(slow.missing().get(0).recorded()).isTrue();
        assertThat(slow.missing().get(0).why()).contains("12 samples a second").contains("it takes 19");
        assertThat(read(moving(50.0, 1.0, DamperReaderTest::wave))
                        .dampers()
                        .orElseThrow()
                        .wheelHop())
                .isFalse();
        assertThat(read(moving(100.0, 1.0, DamperReaderTest::wave))
                        .dampers()
                        .orElseThrow()
                        .wheelHop())
                .isTrue();
    }

    /** The gain in closed form against the fit itself. */
    @Test
    void theWindowKeepsWhatItsFormulaSays() {
        for (int halfWidth : new int[] {1, 3, 6}) {
            for (double hertz : new double[] {1.0, 4.0, 9.0}) {
                double rate = 100.0;
                double[] wave = new double[400];
                for (int i = 0; i < wave.length; i++) {
                    wave[i] = Math.sin(2.0 * Math.PI * hertz * i / rate) / (2.0 * Math.PI * hertz);
                }
                double slope = LocalPolynomial.of(halfWidth, 2).derivative(wave, 1.0 / rate)[200];
                assertThat(slope)
                        .isCloseTo(
                                Math.cos(2.0 * Math.PI * hertz * 200 / rate)
                                        * DamperSpeed.gain(halfWidth, 2.0 * Math.PI * hertz / rate),
                                within(1.0e-9));
            }
        }
        assertThat(DamperSpeed.gain(1, 2.0 * Math.PI * 15.0 / DamperSpeed.leastRateHz(15.0)))
                .isCloseTo(Math.sqrt(0.5), within(1.0e-4));
        assertThat(DamperSpeed.bandHz(DamperSpeed.halfWidth(15.0, 500.0), 500.0))
                .isGreaterThanOrEqualTo(15.0);
    }

    @Test
    void withoutTravelNothingIsMadeUp() {
        ChassisEvidence none = read(new Runs(100.0, 60.0, 3));
        assertThat(none.dampers()).isEmpty();
        assertThat(none.missing()).singleElement().satisfies(missing -> {
            assertThat(missing.subject()).isEqualTo(Subject.DAMPERS);
            assertThat(missing.recorded()).isFalse();
        });
    }
}
