package setwright.core.car.body;

import setwright.core.car.body.Body.Action;
import setwright.core.car.sums.Gravity;

/*
 * Design note. A step is linearly implicit: M (v1 - v0) / h = F(x0 + h v1, v1) with springs linear and each damper on its chord
 * slope. It is of first order, but stable for any damper and step, so that a replay can run at the steps of a logger. Fast
 * movement that it damps too much (above the step's rate) carries no handling. The ODE form of the same forces is in
 * `setwright.core.car.model.VehicleEquations`; a test compares the two.
 */

/** Heave, pitch and roll of a body as it is driven along; mutable, for one thread. */
public final class BodyMotion {
    private static final int NEWTON_STEPS = 4;

    private final Body body;
    private final BodyForces forces;
    private final double sprungMassKg;
    private final double frontShare;
    private final double rearShare;
    private final double[] attitude = new double[3];
    private final double[] rates = new double[3];
    private final double[] loads = new double[4];
    private final double[] residual = new double[3];
    private final double[] matrix = new double[6];
    private final double[] stiffness = new double[6];

    /** Starts at rest, without downforce. */
    public BodyMotion(Body body) {
        this.body = body;
        this.forces = new BodyForces(body);
        this.sprungMassKg = body.sprungMassKg();
        this.frontShare = body.front().damperShare();
        this.rearShare = body.rear().damperShare();
        axleStiffness(body.front(), body.toFrontM());
        axleStiffness(body.rear(), -body.toRearM());
        stiffness[5] -= body.rollMassKgM() * Gravity.STANDARD_MPS2;
    }

    /** Goes to where the body rests under this action. */
    public void settle(Action action) {
        java.util.Arrays.fill(rates, 0.0);
        for (int step = 0; step < NEWTON_STEPS; step++) {
            forces.sumAtRest(attitude, action, loads, residual);
            System.arraycopy(stiffness, 0, matrix, 0, 6);
            addStops(1.0);
            Symmetric3.solve(matrix, residual);
            for (int i = 0; i < 3; i++) {
                attitude[i] += residual[i];
            }
        }
        forces.sum(attitude, rates, action, loads, residual);
        body.lift(loads);
    }

    /** Moves on by a step of time, s, under this action. */
    public void step(double stepS, Action action) {
        forces.sumAtRest(attitude, action, loads, residual);
        double square = stepS * stepS;
        for (int i = 0; i < 6; i++) {
            matrix[i] = square * stiffness[i];
        }
        addStops(square);
        addDampers(stepS * frontShare, body.front(), body.toFrontM());
        addDampers(stepS * rearShare, body.rear(), -body.toRearM());
        matrix[0] += sprungMassKg;
        matrix[3] += body.pitchInertiaKgM2();
        matrix[5] += body.rollInertiaKgM2();
        residual[0] = sprungMassKg * rates[0] + stepS * residual[0];
        residual[1] = body.pitchInertiaKgM2() * rates[1] + stepS * residual[1];
        residual[2] = body.rollInertiaKgM2() * rates[2] + stepS * residual[2];
        Symmetric3.solve(matrix, residual);
        for (int i = 0; i < 3; i++) {
            rates[i] = residual[i];
            attitude[i] += stepS * rates[i];
        }
        forces.sum(attitude, rates, action, loads, residual);
        body.lift(loads);
    }

    /** Returns the load of a wheel, N, never below zero. */
    public double loadN(int wheel) {
        return loads[wheel];
    }

    /** Returns the rise of the body over the front axle since rest without downforce, m. */
    public double riseFrontM() {
        return attitude[0] - body.toFrontM() * attitude[1];
    }

    /** Returns the rise of the body over the rear axle since rest without downforce, m. */
    public double riseRearM() {
        return attitude[0] + body.toRearM() * attitude[1];
    }

    /** Returns the roll, rad; positive with the left side up. */
    public double rollRad() {
        return attitude[2];
    }

    /** Returns the pitch, rad; positive with the nose down. */
    public double pitchRad() {
        return attitude[1];
    }

    /** Matrix entries in the order zz, zp, zr, pp, pr, rr. */
    private void axleStiffness(Axle axle, double x) {
        double ride = 2.0 * axle.rideRate();
        stiffness[0] += ride;
        stiffness[1] -= ride * x;
        stiffness[3] += ride * x * x;
        stiffness[5] += axle.rollStiffness();
    }

    private void addStops(double factor) {
        addStops(factor, body.front(), body.toFrontM());
        addStops(factor, body.rear(), -body.toRearM());
    }

    private void addStops(double factor, Axle axle, double x) {
        double together = -(attitude[0] - x * attitude[1]);
        double apart = -0.5 * axle.trackM() * attitude[2];
        if (together + apart > axle.bumpStopGapM()) {
            add(factor * axle.bumpStopNPerM(), x, 0.5 * axle.trackM());
        }
        if (together - apart > axle.bumpStopGapM()) {
            add(factor * axle.bumpStopNPerM(), x, -0.5 * axle.trackM());
        }
    }

    private void addDampers(double factor, Axle axle, double x) {
        double half = 0.5 * axle.trackM();
        double together = x * rates[1] - rates[0];
        double apart = -half * rates[2];
        Damper damper = axle.damper();
        add(factor * damper.slope(together + apart), x, half);
        add(factor * damper.slope(together - apart), x, -half);
    }

    /** Adds {@code c u u^T} with the direction {@code u = (1, -x, y)} of a wheel. */
    private void add(double c, double x, double y) {
        matrix[0] += c;
        matrix[1] -= c * x;
        matrix[2] += c * y;
        matrix[3] += c * x * x;
        matrix[4] -= c * x * y;
        matrix[5] += c * y * y;
    }
}
