package setwright.core.simulation.fault;

import java.util.function.DoubleUnaryOperator;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.Parameter;
import setwright.core.car.model.SteadyState;

/*
 * Design note. A fault can only be told from a car that has none. Whatever a car's true tyres and springs are, three numbers are left
 * that a driver would not notice as such and that settle its balance: the grip of the front tyres over that of the rear
 * (slow corners), the front share of the downforce (fast corners) and the true brake share (braking). Each is found by
 * bisection on the condition it settles; as each also moves the others' conditions a little, all are gone through a few times.
 * Bounds are a few spreads of the prior: a car that would need more is no car that its sheet describes.
 */

/**
 * A true car that is well balanced: in steady corners the front axle is at its limit just before the rear, on the brakes it
 * would lock just before the rear.
 */
public final class BalancedTruth {
    /** A slow corner, m/s. */
    public static final double SLOW_MPS = 20.0;

    /** A middling one, m/s. */
    public static final double MEDIUM_MPS = 35.0;

    /** A fast one, m/s. */
    public static final double FAST_MPS = 50.0;

    private static final double BRAKING_MPS = 30.0;
    /** Use of the front at which the brakes are looked at: short of locking, and as hard as a driver trails them. */
    private static final double HARD_USE = 0.85;

    private static final double TRAILED_USE = 0.6;
    /**
     * Understeer in steady cornering that leaves a car neutral on the way in, where the brakes take a tenth of the rear's limit and
     * more. Measured: of margins from 2 to 10 % our own driver laps the invented cars most quickly from about 7 % on.
     */
    private static final double REAR_DRIVE_MARGIN = 0.07;
    /** The same for front-drive cars, quickest at 6 %: the throttle takes from the front. */
    private static final double FRONT_DRIVE_MARGIN = 0.06;

    private static final double BRAKE_LEAD = 0.04;
    private static final double TOLERANCE = 0.01;
    /** No corner may be outside, whatever the means are. */
    private static final double LEAST_MARGIN = 0.02;

    private static final double MOST_MARGIN = 0.14;
    private static final double FAST_TOLERANCE = 0.02;
    private static final double LEAST_LEAD = 0.0;
    private static final double MOST_LEAD = 0.12;
    /** Bounds on either side of the prior's middle, in spreads of the prior. */
    private static final double MOST_SPREADS = 2.5;

    private static final int ROUNDS = 4;
    private static final int HALVINGS = 14;
    private static final double LEAST_MPS2 = 2.0;
    private static final double MOST_MPS2 = 60.0;

    private final double[] parameters;
    private final double target;
    private final Margins margins;
    private final double lead;
    private final boolean lifts;

    /**
     * By which share the rear's limit lies above the front's; negative when the rear gives out first.
     *
     * @param slow    in a slow corner
     * @param medium  in a middling one
     * @param fast    in a fast one
     */
    public record Margins(double slow, double medium, double fast) {
        /** The balance that no wing makes: of slow and middling corners, of all where there is no downforce. */
        private double mechanical(boolean lifts) {
            return lifts ? 0.5 * (slow + medium) : (slow + medium + fast) / 3.0;
        }

        private double least() {
            return Math.min(slow, Math.min(medium, fast));
        }

        private double most() {
            return Math.max(slow, Math.max(medium, fast));
        }
    }

    private BalancedTruth(double[] parameters, double target, Margins margins, double lead, boolean lifts) {
        this.parameters = parameters;
        this.target = target;
        this.margins = margins;
        this.lead = lead;
        this.lifts = lifts;
    }

    /**
     * Returns the car with its grip split, lift balance and brake share moved so that it is balanced, as far as bounds allow.
     *
     * @param sheet       of the car in its balanced setup
     * @param parameters  drawn, by index of {@link Parameter}; all others are kept
     */
    public static BalancedTruth balance(CarSheet sheet, double[] parameters) {
        return new Balancer(sheet, parameters, usualMargin(sheet)).balanced();
    }

    /**
     * Returns the car with the rear's limit above the front's by a margin of choice.
     *
     * @param margin  share, such as 0.02; more understeers more
     */
    public static BalancedTruth balance(CarSheet sheet, double[] parameters, double margin) {
        return new Balancer(sheet, parameters, margin).balanced();
    }

    private static double usualMargin(CarSheet sheet) {
        return sheet.drivenAxle() == DrivenAxle.FRONT ? FRONT_DRIVE_MARGIN : REAR_DRIVE_MARGIN;
    }

    /** Returns what a car is like as it stands. */
    public static BalancedTruth measure(CarSheet sheet, double[] parameters) {
        return new Balancer(sheet, parameters, usualMargin(sheet)).measured();
    }

    /** Returns a copy of the true values, by index of {@link Parameter}. */
    public double[] parameters() {
        return parameters.clone();
    }

    /** Returns which axle gives out first in steady corners, and by how much. */
    public Margins margins() {
        return margins;
    }

    /**
     * Returns by which share the front axle uses more of its grip than the rear on the brakes, hard or trailed, whichever is
     * less.
     */
    public double brakeLead() {
        return lead;
    }

    /** Tells whether the conditions were met; draw another car when not. */
    public boolean isBalanced() {
        return Math.abs(margins.mechanical(lifts) - target) < TOLERANCE
                && (!lifts || Math.abs(margins.fast() - target) < FAST_TOLERANCE)
                && margins.least() > LEAST_MARGIN
                && margins.most() < MOST_MARGIN
                && lead > LEAST_LEAD
                && lead < MOST_LEAD;
    }

    /**
     * Returns by which share the rear's limit lies above the front's.
     *
     * @param speedMps     m/s
     * @param forwardMps2  acceleration along the path, m/s²
     * @return NaN when no limit was found
     */
    public static double margin(CarModel car, double speedMps, double forwardMps2) {
        return new Equilibrium(car, Equilibrium.Axes.PATH)
                .greatestLateral(speedMps, forwardMps2)
                .map(limit -> limit.state().frontUse() / limit.state().rearUse() - 1.0)
                .orElse(Double.NaN);
    }

    /**
     * Returns by which share the front axle uses more of its grip than the rear when the car brakes straight ahead so hard
     * that one of them uses this much.
     *
     * @param use  0..1
     */
    public static double brakeLead(CarModel car, double speedMps, double use) {
        Equilibrium equilibrium = new Equilibrium(car);
        double low = LEAST_MPS2;
        double high = MOST_MPS2;
        double lead = Double.NaN;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            SteadyState state = equilibrium.at(speedMps, -middle, 0.0).orElse(null);
            if (state == null || Math.max(state.frontUse(), state.rearUse()) > use) {
                high = middle;
            } else {
                low = middle;
                lead = state.frontUse() / state.rearUse() - 1.0;
            }
        }
        return lead;
    }

    private static final class Balancer {
        private final CarAssembler assembler;
        private final CarPrior prior;
        private final double[] parameters;
        private final double target;
        private final boolean lifts;

        Balancer(CarSheet sheet, double[] parameters, double target) {
            this.assembler = new CarAssembler(sheet);
            this.prior = CarPrior.of(sheet);
            this.parameters = parameters.clone();
            this.target = target;
            this.lifts = sheet.downforce() != Downforce.NONE;
        }

        BalancedTruth balanced() {
            for (int round = 0; round < ROUNDS; round++) {
                // more grip in front, or more downforce there: the rear's margin falls
                settle(Parameter.GRIP_SPLIT, value -> target - margins().mechanical(lifts));
                if (lifts) {
                    settle(Parameter.LIFT_BALANCE, value -> target - margin(FAST_MPS));
                }
            }
            settle(Parameter.BRAKE_SHARE, value -> lead() - BRAKE_LEAD);
            return measured();
        }

        BalancedTruth measured() {
            return new BalancedTruth(parameters.clone(), target, margins(), lead(), lifts);
        }

        private Margins margins() {
            return new Margins(margin(SLOW_MPS), margin(MEDIUM_MPS), margin(FAST_MPS));
        }

        private double margin(double speed) {
            return BalancedTruth.margin(assembler.build(parameters), speed, 0.0);
        }

        private double lead() {
            CarModel car = assembler.build(parameters);
            // load moves forward with braking, and the engine drags at one axle only: either may be the worse
            return Math.min(
                    BalancedTruth.brakeLead(car, BRAKING_MPS, HARD_USE),
                    BalancedTruth.brakeLead(car, BRAKING_MPS, TRAILED_USE));
        }

        /** Bisects on an excess that grows with the parameter; stays at a bound when the root lies beyond. */
        private void settle(Parameter parameter, DoubleUnaryOperator excess) {
            double reach = MOST_SPREADS * prior.spread(parameter);
            double low = prior.middle(parameter) - reach;
            double high = prior.middle(parameter) + reach;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = 0.5 * (low + high);
                parameters[parameter.index()] = middle;
                if (excess.applyAsDouble(middle) < 0.0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
        }
    }
}
