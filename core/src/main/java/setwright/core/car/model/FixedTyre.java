package setwright.core.car.model;

/*
 * Design note. A replay asks for axle forces tens of millions of times, always at the camber and pressure of one setup. This
 * form keeps what is then left of a tyre: two peaks that bend with load and two shapes. The slip angle at the peak, a power
 * of the load in the full tyre, is its expansion to second order about the nominal load: within 2 % from half to twice
 * of it for exponents up to 0.3.
 */

/** A tyre at one camber and pressure, reduced to what a replay needs. */
final class FixedTyre {
    /** The force is a function of slip worth inverting up to this share of the peak; beyond, the curve goes on straight. */
    static final double HIGHEST_SHARE = 0.97;

    private final double nominalN;
    private final double lateral;
    private final double along;
    private final double sensitivity;
    private final double peakSlip;
    private final double slipSlope;
    private final double slipBend;
    private final double peakRatio;
    private final double shape;
    private final double stiffness;

    FixedTyre(
            double nominalN,
            double lateral,
            double along,
            double sensitivity,
            double peakSlip,
            double slipExponent,
            double peakRatio,
            double shape) {
        this.nominalN = nominalN;
        this.lateral = lateral;
        this.along = along;
        this.sensitivity = sensitivity;
        this.peakSlip = peakSlip;
        this.slipSlope = slipExponent;
        this.slipBend = 0.5 * slipExponent * (slipExponent - 1.0);
        this.peakRatio = peakRatio;
        this.shape = shape;
        this.stiffness = Math.tan(Math.PI / (2.0 * shape));
    }

    /** Returns the greatest lateral force, N. */
    double lateralPeak(double loadN) {
        return lateral * loadN * bent(loadN);
    }

    /** Returns the greatest longitudinal force, N. */
    double alongPeak(double loadN) {
        return along * loadN * bent(loadN);
    }

    /** Returns the slip angle at the peak, rad. */
    double peakSlip(double loadN) {
        double away = loadN / nominalN - 1.0;
        return peakSlip * Math.max(0.5, 1.0 + slipSlope * away + slipBend * away * away);
    }

    /** Returns force over peak at a slip over that of the peak. */
    double share(double slip) {
        return Math.sin(shape * Math.atan(stiffness * slip));
    }

    /** Returns the derivative of {@link #share}. */
    double slope(double slip) {
        double x = stiffness * slip;
        return shape * stiffness * Math.cos(shape * Math.atan(x)) / (1.0 + x * x);
    }

    /** Returns the slip over that of the peak that gives a force over peak, on the rising side. */
    double inverse(double share) {
        return Math.tan(Math.asin(share) / shape) / stiffness;
    }

    /** Returns the slip ratio that gives a longitudinal force over peak, on the rising side. */
    double ratioAt(double share) {
        return peakRatio * inverse(Math.min(share, HIGHEST_SHARE));
    }

    /** Returns longitudinal stiffness over peak force, per unit of slip ratio. */
    double alongStiffnessShare() {
        return shape * stiffness / peakRatio;
    }

    /** Returns the cornering stiffness, N/rad. */
    double corneringStiffness(double loadN) {
        return lateralPeak(loadN) * shape * stiffness / peakSlip(loadN);
    }

    /** Friction over that at nominal load; the peak force never falls with load. */
    private double bent(double loadN) {
        double relative = loadN / nominalN;
        double friction = 1.0 - sensitivity * (relative - 1.0);
        double most = (1.0 + sensitivity) / (2.0 * Math.max(sensitivity, 1.0e-9));
        return relative <= most ? friction : 0.5 * (1.0 + sensitivity) * most / relative;
    }
}
