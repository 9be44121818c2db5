package setwright.core.car.model;

import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.RaceTyre;

/*
 * Design note. A replay asks for axle forces tens of millions of times, always at the camber and pressure of one setup. This
 * form keeps what is then left of a tyre: two peaks that bend with load and two shapes. The slip angle at the peak, a power
 * of the load in the full tyre, is its expansion to second order about the nominal load: within 3 % from half to twice
 * of it for exponents up to 0.3.
 */

/** A tyre at one camber and pressure, reduced to what a replay needs. */
public final class MountedTyre {
    /** The force is a function of slip worth inverting up to this share of the peak; beyond, the curve goes on straight. */
    static final double HIGHEST_SHARE = 0.97;

    /** The peak force grows with load by at least this share of the nominal friction. */
    private static final double LEAST_GROWTH = 0.3;

    /** Close to the published passenger-car set and to racing tyres alike, see {@link setwright.core.car.TyreCurve}. */
    public static final CurveShape SHAPE = CurveShape.of(1.4);

    private static final CurveTable CURVE = new CurveTable(SHAPE);

    private final RaceTyre tyre;
    private final double inclination;
    private final double pressure;
    private final double nominalN;
    private final double lateral;
    private final double along;
    private final double sensitivity;
    /** Relative load from which the peak force grows by its least share. */
    private final double turn;

    private final double peakSlip;
    private final double slipSlope;
    private final double slipBend;
    private final double peakRatio;

    /**
     * Mounts a tyre.
     *
     * @param tyre         its full form; its lateral curve must have the shape {@link #SHAPE}
     * @param inclination  camber as set, rad, negative leaning in at the top; both wheels of an axle are taken alike
     * @param pressure     over the best pressure
     */
    public MountedTyre(RaceTyre tyre, double inclination, double pressure) {
        if (!tyre.lateralShape().equals(SHAPE)) {
            throw new IllegalArgumentException("a mounted tyre has the lateral shape factor " + SHAPE.factor());
        }
        this.tyre = tyre;
        this.inclination = inclination;
        this.pressure = pressure;
        this.nominalN = tyre.nominalLoadN();
        this.lateral = tyre.lateralPeak(nominalN, inclination, pressure) / nominalN;
        this.along = tyre.longitudinalPeak(nominalN, inclination, pressure) / nominalN;
        this.sensitivity = tyre.loadSensitivity();
        this.turn = (1.0 - LEAST_GROWTH + sensitivity) / (2.0 * Math.max(sensitivity, 1.0e-9));
        this.peakSlip = tyre.peakSlipAngle(nominalN, inclination, pressure);
        double exponent = tyre.peakSlipAngleExponent();
        this.slipSlope = exponent;
        this.slipBend = 0.5 * exponent * (exponent - 1.0);
        this.peakRatio = tyre.peakSlipRatio(nominalN, inclination, pressure);
    }

    /** Returns the full form. */
    public RaceTyre tyre() {
        return tyre;
    }

    /** Returns the camber as set, rad. */
    public double inclination() {
        return inclination;
    }

    /** Returns the pressure over the best. */
    public double pressure() {
        return pressure;
    }

    /** Returns the greatest lateral force, N. */
    public double lateralPeak(double loadN) {
        return lateralPeak(loadN, bent(loadN));
    }

    /** The same where {@link #bent} is known. */
    double lateralPeak(double loadN, double bent) {
        return lateral * loadN * bent;
    }

    /** Returns the greatest longitudinal force, N. */
    public double alongPeak(double loadN) {
        return alongPeak(loadN, bent(loadN));
    }

    /** The same where {@link #bent} is known. */
    double alongPeak(double loadN, double bent) {
        return along * loadN * bent;
    }

    /** Returns the slip angle at the peak, rad. */
    public double peakSlip(double loadN) {
        double away = loadN / nominalN - 1.0;
        return peakSlip * Math.max(0.5, 1.0 + slipSlope * away + slipBend * away * away);
    }

    /** Returns force over peak at a slip over that of the peak. */
    public double share(double slip) {
        return CURVE.share(slip);
    }

    /** Returns the derivative of {@link #share}. */
    double slope(double slip) {
        return CURVE.slope(slip);
    }

    /** Returns the slip over that of the peak that gives a force over peak, on the rising side. */
    public double inverse(double share) {
        return CURVE.inverse(share);
    }

    /** Returns the slip ratio that gives a longitudinal force over peak, on the rising side. */
    double ratioAt(double share) {
        return peakRatio * inverse(Math.min(share, HIGHEST_SHARE));
    }

    /** Returns longitudinal stiffness over peak force, per unit of slip ratio. */
    double alongStiffnessShare() {
        return CURVE.initialSlope() / peakRatio;
    }

    /** Returns the cornering stiffness, N/rad. */
    public double corneringStiffness(double loadN) {
        return lateralPeak(loadN) * CURVE.initialSlope() / peakSlip(loadN);
    }

    /** Friction over that at nominal load, with the full tyre's guard against a peak force that falls with load. */
    double bent(double loadN) {
        double relative = loadN / nominalN;
        if (relative <= turn) {
            return 1.0 - sensitivity * (relative - 1.0);
        }
        double there = turn * (1.0 - sensitivity * (turn - 1.0));
        return (there + LEAST_GROWTH * (relative - turn)) / relative;
    }
}
