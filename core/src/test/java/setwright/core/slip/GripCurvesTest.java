package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.numerics.Robust;
import setwright.core.simulation.driven.Signal;

/** Grip curves of recorded laps beside what the wheels of the simulated car carried and how they slipped, which no sensor tells. */
final class GripCurvesTest {
    /** Lateral acceleration in which slip angles are read against their use, m/s². */
    private static final double CORNERING = 6.0;

    /** A tenth: doubt of the slip at the peak, of which the force near it shows half. */
    private static final double NEAR_SHARE = 0.05;

    /** To which the use of an axle is known (docs/slip.md, section 6). */
    private static final double USE_ERROR = 0.1;

    /** Moments of one second and a half. */
    private static final int ENOUGH = 90;

    private static final SimulatedStint DRIVEN = SimulatedStint.of(0.97, 4711L);
    private static final Stint STINT = DRIVEN.without(Set.of());
    private static final List<GripCurve> CURVES = curves(STINT);

    @ParameterizedTest
    @EnumSource
    void points_near_the_peak_lie_on_the_force_over_load_that_was_there(AxleSide axle) {
        GripCurve curve = of(axle, CURVES);
        List<GripCurve.Point> known = curve.points().stream()
                .filter(point -> point.slipRad() > 0.4 * curve.peakSlipRad())
                .filter(point -> forces(axle, point).size() >= ENOUGH)
                .toList();
        assertThat(known)
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(point -> assertThat(median(forces(axle, point)))
                        .isCloseTo(point.force(), within(NEAR_SHARE * point.force())));
        // a third of the downforce, which carries a tenth of the load to two thirds of it
        assertThat(curve.loadDoubt()).isBetween(0.03, 0.23);
    }

    @ParameterizedTest
    @EnumSource
    void slip_at_the_peak_is_that_of_the_tyres_and_not_that_of_the_sheet(AxleSide axle) {
        GripCurve curve = of(axle, CURVES);
        List<Double> peaks = new ArrayList<>();
        moments()
                .filter(i -> Math.abs(DRIVEN.at(Signal.LATERAL_ACCELERATION, i)) > CORNERING)
                .filter(i -> Math.abs(DRIVEN.at(Signal.FORWARD_ACCELERATION, i)) < 0.5)
                .forEach(i -> peaks.add(Math.abs(slip(axle, i)) / use(axle, i)));
        assertThat(median(peaks)).isBetween(curve.peakSlipLowRad(), curve.peakSlipHighRad());
    }

    @ParameterizedTest
    @EnumSource
    void the_time_at_the_limit_is_that_in_which_little_force_was_left(AxleSide axle) {
        GripCurve curve = of(axle, CURVES);
        assertThat(curve.limitShare())
                .isBetween(
                        beyond(axle, GripCurves.LIMIT_USE + USE_ERROR), beyond(axle, GripCurves.LIMIT_USE - USE_ERROR));
    }

    @ParameterizedTest
    @EnumSource
    void two_laps_tell_no_grip(AxleSide axle) {
        List<Lap> two = STINT.goodLaps().subList(0, 2);
        Stint few = new Stint(STINT.recording(), STINT.circuit(), two, STINT.station(), STINT.offset());
        GripCurve curve = of(axle, curves(few));
        assertThat(curve.isKnown()).isFalse();
        assertThat(curve.points()).isEmpty();
        assertThat(curve.limitShare()).isBetween(0.0, 1.0);
    }

    private static List<GripCurve> curves(Stint stint) {
        CarSheet sheet = DRIVEN.sheet();
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        return GripCurves.of(stint, trace, sheet, SlipEstimator.steps(stint, trace, sheet));
    }

    private static GripCurve of(AxleSide axle, List<GripCurve> curves) {
        return curves.stream().filter(curve -> curve.axle() == axle).findFirst().orElseThrow();
    }

    /** What was there at the slip angles of a point, hardly braked or driven. */
    private static List<Double> forces(AxleSide axle, GripCurve.Point point) {
        return moments()
                .filter(i -> Math.abs(Math.abs(slip(axle, i)) - point.slipRad()) < Math.toRadians(0.25))
                .filter(i -> Math.abs(DRIVEN.at(Signal.FORWARD_ACCELERATION, i)) < 2.0)
                .map(i -> force(axle, i))
                .toList();
    }

    /** In good laps, cornering by three tenths of the grip and more. */
    private static Stream<Integer> moments() {
        return STINT.goodLaps().stream()
                .flatMapToInt(lap -> IntStream.range(lap.from(), lap.to()))
                .filter(i -> Math.abs(DRIVEN.at(Signal.LATERAL_ACCELERATION, i)) > 4.5)
                .boxed();
    }

    private static double beyond(AxleSide axle, double use) {
        return moments().filter(i -> use(axle, i) >= use).count()
                / (double) moments().count();
    }

    private static double slip(AxleSide axle, int i) {
        return DRIVEN.at(axle == AxleSide.FRONT ? Signal.SLIP_FRONT : Signal.SLIP_REAR, i);
    }

    private static double use(AxleSide axle, int i) {
        return DRIVEN.at(axle == AxleSide.FRONT ? Signal.USE_FRONT : Signal.USE_REAR, i);
    }

    /** From the true motion and the true loads of the wheels. */
    private static double force(AxleSide axle, int i) {
        CarSheet sheet = DRIVEN.sheet();
        boolean front = axle == AxleSide.FRONT;
        double arm = (front ? sheet.rearAxleToCentreM() : sheet.frontAxleToCentreM()) / sheet.wheelbaseM();
        double load = front
                ? DRIVEN.at(Signal.LOAD_FRONT_LEFT, i) + DRIVEN.at(Signal.LOAD_FRONT_RIGHT, i)
                : DRIVEN.at(Signal.LOAD_REAR_LEFT, i) + DRIVEN.at(Signal.LOAD_REAR_RIGHT, i);
        return sheet.massKg() * arm * Math.abs(DRIVEN.at(Signal.LATERAL_ACCELERATION, i)) / load;
    }

    private static double median(List<Double> values) {
        return Robust.median(values.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
