package setwright.core.judgement.driving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.PassShapes;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.driving.MovingEvent.Source;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** What an event that moves costs, on invented passes whose price is known. */
final class EventCostTest {
    private static final double BASE_S = 6.0;
    private static final int LAPS = 10;

    @Test
    void theDriversOwnLapsGiveThePrice() {
        double perMetre = 0.02;
        MovingEvent event = event(passes(5.0, brakeOn -> -perMetre * brakeOn, 0.01));

        assertThat(event.measure()).isEqualTo(Measure.BRAKE_POINT);
        assertThat(event.clear()).isTrue();
        assertThat(event.source()).isEqualTo(Source.LAPS);
        assertThat(event.better()).isEqualTo("later");
        // two thirds of a standard deviation lie between the middle and the better quarter; half of that for ten laps'
        // luck
        double expected = 0.67 * 5.0 * perMetre;
        assertThat(event.cost().orElseThrow().seconds()).isBetween(0.5 * expected, 1.5 * expected);
        assertThat(event.cost().orElseThrow().low()).isPositive();
    }

    @Test
    void physicsIsAskedWhereTheLapsDoNotTell() {
        MovingEvent event = event(passes(5.0, brakeOn -> 0.0, 0.2));

        assertThat(event.source()).isEqualTo(Source.PHYSICS);
        double perMetre = 1.0 / 30.0 - 1.0 / 50.0; // turn-in and straight of these passes
        assertThat(event.cost().orElseThrow().high()).isLessThan(1.5 * 0.67 * 5.0 * perMetre);
        assertThat(event.cost().orElseThrow().low()).isZero();
    }

    @Test
    void aDriverWhoHardlyMovesHasNoPrice() {
        MovingEvent event = event(passes(0.1, brakeOn -> -0.02 * brakeOn, 0.01));

        assertThat(event.source()).isEqualTo(Source.NONE);
        assertThat(event.cost()).isEmpty();
    }

    private static MovingEvent event(List<CornerPass> passes) {
        double[] points = passes.stream()
                .mapToDouble(pass -> pass.events().brakeOn().orElseThrow())
                .toArray();
        List<AtCorner> corners = new ArrayList<>();
        corners.add(entry(1, Robust.qn(points)));
        for (int other = 2; other <= 5; other++) {
            corners.add(entry(other, 0.05));
        }
        Repeatability driving = new Repeatability(true, 0.1, 0.1, 0.001, 0.01, corners, "");
        return EventCost.at(driving, corners.get(0), passes).orElseThrow();
    }

    private static AtCorner entry(int corner, double scatterM) {
        return new AtCorner(
                corner, true, Measure.BRAKE_POINT, Map.of(Measure.BRAKE_POINT, scatterM), LAPS, 0.001, 0.02, "");
    }

    private static List<CornerPass> passes(
            double scatterM, java.util.function.DoubleUnaryOperator time, double noiseS) {
        Random random = new Random(7L);
        List<CornerPass> passes = new ArrayList<>();
        double[] speeds = new double[PassShapes.POINTS];
        java.util.Arrays.fill(speeds, 30.0);
        speeds[0] = 50.0;
        Channel zero = Channel.of(new double[PassShapes.POINTS]);
        for (int lap = 1; lap <= LAPS; lap++) {
            double brakeOn = 100.0 + scatterM * random.nextGaussian();
            OptionalDouble none = OptionalDouble.empty();
            passes.add(new CornerPass(
                    lap,
                    1,
                    SpeedClass.MEDIUM,
                    new CornerEvents(
                            OptionalDouble.of(brakeOn),
                            none,
                            OptionalDouble.of(160.0),
                            none,
                            none,
                            none,
                            none,
                            none,
                            none),
                    10.0 * lap,
                    Map.of(),
                    List.of(),
                    List.of(),
                    new Habits(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.1, 0.4, 0.8, 0.0, Double.NaN, 0.0, 1.5, 1.2),
                    new PassShapes(Channel.of(speeds), zero, zero, zero),
                    30.0,
                    25.0,
                    40.0,
                    BASE_S + time.applyAsDouble(brakeOn) + noiseS * random.nextGaussian(),
                    0.5));
        }
        return passes;
    }
}
