package setwright.core.technique;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.DrivingFault;
import setwright.core.numerics.Robust;

/*
 * Design note. A driver who does the same thing on every lap shows no better quarter of his own to aim for: what differs is a hundredth of a
 * second. Then the fault itself says how large the first step is. Brake: the exponent p of the ellipse that he asks for leaves
 * (1 - y^p)^(1/p) for the brake beside a share y of the cornering, and that of a car 1.65 (the mean of steady models of four cars). Throttle:
 * at the bottom of the lift he is left with what the car can take, and he had as much already before; to have it then with the same foot
 * he picks up later by that time. Half of it is the step, as the lift also makes good what came too early: for 18 simulated drivers half of
 * it, median over the corners, is 0.6 to 1.9 times what they are early by, 0.95 in the median.
 */

/**
 * What a driver changes first, where his laps hardly differ: by the fault itself.
 *
 * @param of     what he changes
 * @param usual  as he does it now
 * @param aim    as he is to do it
 */
public record FirstStep(Of of, double usual, double aim) {
    /** Where braking is told: between the half and nine tenths that the exponent is read from. */
    public static final double OF_THE_CORNERING = 0.7;

    /** Exponent of the ellipse of friction that a car leaves: the mean of steady models of four invented cars. */
    static final double LEFT_BY_CARS = 1.65;

    private static final double HALF_WAY = 0.5;

    /** What is changed. */
    public enum Of {
        /** Share of the hardest braking of the pass that goes with {@link #OF_THE_CORNERING} of the cornering. */
        BRAKE_BESIDE_CORNERING("brake beside seven tenths of the cornering", "share of hardest braking"),
        /** Time by which the throttle is picked up later than now, s. */
        PICK_UP("throttle picked up later", "s");

        private final String words;
        private final String unit;

        Of(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }

        /** Returns the unit of its values. */
        public String unit() {
            return unit;
        }
    }

    /**
     * Returns the step against a fault; empty where the fault is no habit, or tells no size.
     *
     * @param passes  of the stint
     */
    static Optional<FirstStep> against(DrivingFault fault, List<CornerPass> passes) {
        if (!fault.habit()) {
            return Optional.empty(); // good drivers lift in a corner or two as well
        }
        if (fault.byTheBrake()) {
            double exponent = median(fault, passes, pass -> pass.habits().trailShape());
            return exponent > LEFT_BY_CARS
                    ? Optional.of(new FirstStep(Of.BRAKE_BESIDE_CORNERING, beside(exponent), beside(LEFT_BY_CARS)))
                    : Optional.empty();
        }
        double ahead =
                fault.byTheLift() ? median(fault, passes, pass -> pass.habits().throttleAheadS()) : Double.NaN;
        return ahead > 0.0 ? Optional.of(new FirstStep(Of.PICK_UP, 0.0, HALF_WAY * ahead)) : Optional.empty();
    }

    /** What an ellipse of friction leaves along the car, 0..1. */
    static double beside(double exponent) {
        return Math.pow(1.0 - Math.pow(OF_THE_CORNERING, exponent), 1.0 / exponent);
    }

    /** Over the corners of a fault, of what is usual in each; NaN without any. */
    private static double median(DrivingFault fault, List<CornerPass> passes, ToDoubleFunction<CornerPass> value) {
        return Robust.median(fault.corners().stream()
                .mapToDouble(corner -> Robust.median(passes.stream()
                        .filter(pass -> pass.corner() == corner)
                        .mapToDouble(value)
                        .toArray()))
                .toArray());
    }
}
