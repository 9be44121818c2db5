package setwright.core.car.tyre;

import java.util.Objects;

/**
 * A tyre with few parameters, each of which an engineer can name: where it peaks, how high, and what load, camber and
 * pressure do to that.
 *
 * <p>With {@code q = load / nominal load}, i the inclination, p the pressure over the best:
 * <pre>
 * F_y       = F_y,peak sin(C atan(B (alpha + shift) / alpha_peak)),  B = tan(pi / (2 C))
 * F_y,peak  = mu_y F_z0 q (1 - s (q - 1)) camber(i) pressure(p)
 * alpha_peak = alpha_0 q^e / stiffness(p),    shift = -thrust i
 * F_x likewise over slip ratio, its peak at the same slip ratio at any load
 * </pre>
 * Where the load sensitivity would let the peak force grow by less than {@value #LEAST_FACTOR} of the nominal friction per
 * newton of load, the peak goes on with that slope: force grows with load at any load, and friction stays positive. No
 * other factor falls below {@value #LEAST_FACTOR} either.
 *
 * <p>Inclination belongs to the side, not to the slip: mirrored, with slip and inclination both negated, the force is
 * negated. A force against the turn thus feels the inclination with the other sign.
 *
 * <p>A replay evaluates this tens of millions of times: no object is made, and a force costs one power, one arc tangent
 * and one sine. Whoever keeps load and camber over several slip angles asks once for {@link #lateralPeak},
 * {@link #peakSlipAngle} and {@link #camberSlip}; a force with the turn is then
 * {@code peak * lateralShape.share((slip + camberSlip) / (peakSlip + camberSlip))}.
 *
 * @param nominalLoadN           load at which the values below hold, N, &gt; 0
 * @param lateralFriction        peak lateral force over load there, upright or best inclined, 0.1..5
 * @param longitudinalFriction   peak longitudinal force over load there, 0.1..5
 * @param loadSensitivity        friction lost per relative extra load, 0..1; the 1987 set has 0.096 at 4 kN
 * @param peakSlipAngle          slip angle at the lateral peak at nominal load, rad, 0.01..0.6; 6 to 9 deg (common practice)
 * @param peakSlipAngleExponent  power of relative load by which that angle grows, -1..1
 * @param peakSlipRatio          slip ratio at the longitudinal peak, 0.01..0.6; the 1987 set has 0.10 at 4 kN
 * @param lateralShape           shape of the lateral curve, C about 1.4
 * @param longitudinalShape      shape of the longitudinal curve, C about 1.5
 * @param camber                 what inclination does
 * @param pressure               what pressure does
 */
public record RaceTyre(
        double nominalLoadN,
        double lateralFriction,
        double longitudinalFriction,
        double loadSensitivity,
        double peakSlipAngle,
        double peakSlipAngleExponent,
        double peakSlipRatio,
        CurveShape lateralShape,
        CurveShape longitudinalShape,
        CamberEffect camber,
        PressureEffect pressure)
        implements Tyre {

    /** No effect takes more than seven tenths; beyond that the parabolas and lines are far outside what they stand for. */
    static final double LEAST_FACTOR = 0.3;

    /** A power of load needs a load: below this share of the nominal load the peak slip angle stays as it is. */
    private static final double LEAST_RELATIVE_LOAD = 0.05;

    /** Camber thrust is never worth more than this share of the peak slip angle, so that the peak keeps its side. */
    private static final double GREATEST_SHIFT = 0.5;

    /** @throws IllegalArgumentException if a value is outside the range given above */
    public RaceTyre {
        Range.check("nominal load of a tyre, N", nominalLoadN, 1.0, 1.0e6);
        Range.check("lateral friction of a tyre", lateralFriction, 0.1, 5.0);
        Range.check("longitudinal friction of a tyre", longitudinalFriction, 0.1, 5.0);
        Range.check("load sensitivity of a tyre", loadSensitivity, 0.0, 1.0);
        Range.check("slip angle at the peak of a tyre, rad", peakSlipAngle, 0.01, 0.6);
        Range.check("load exponent of the slip angle at the peak", peakSlipAngleExponent, -1.0, 1.0);
        Range.check("slip ratio at the peak of a tyre", peakSlipRatio, 0.01, 0.6);
        Objects.requireNonNull(lateralShape, "lateralShape");
        Objects.requireNonNull(longitudinalShape, "longitudinalShape");
        Objects.requireNonNull(camber, "camber");
        Objects.requireNonNull(pressure, "pressure");
    }

    @Override
    public double lateral(double slipAngle, double loadN, double inclination, double pressureShare) {
        double peakSlip = unshiftedPeakSlip(loadN, pressureShare);
        double slip = slipAngle + shift(peakSlip, inclination);
        return lateralPeak(loadN, towardForce(inclination, slip), pressureShare) * lateralShape.share(slip / peakSlip);
    }

    @Override
    public double longitudinal(double slipRatio, double loadN, double inclination, double pressureShare) {
        return longitudinalPeak(loadN, inclination, pressureShare) * longitudinalShape.share(slipRatio / peakSlipRatio);
    }

    @Override
    public double lateralPeak(double loadN, double inclination, double pressureShare) {
        return lateralFriction
                * equivalentLoad(loadN)
                * camber.lateralFactor(inclination)
                * pressure.frictionFactor(pressureShare);
    }

    @Override
    public double longitudinalPeak(double loadN, double inclination, double pressureShare) {
        return longitudinalFriction
                * equivalentLoad(loadN)
                * camber.longitudinalFactor(inclination)
                * pressure.frictionFactor(pressureShare);
    }

    @Override
    public double peakSlipAngle(double loadN, double inclination, double pressureShare) {
        double peakSlip = unshiftedPeakSlip(loadN, pressureShare);
        return peakSlip - shift(peakSlip, inclination);
    }

    /** Returns the slip ratio at the longitudinal peak: the same at any load, inclination and pressure. */
    @Override
    public double peakSlipRatio(double loadN, double inclination, double pressureShare) {
        return peakSlipRatio;
    }

    /** Returns the slip angle that the inclination is worth, rad; positive when leaning into the turn. */
    public double camberSlip(double loadN, double inclination, double pressureShare) {
        return shift(unshiftedPeakSlip(loadN, pressureShare), inclination);
    }

    /**
     * Returns the lateral force left beside a longitudinal one, N: {@code F_y0 sqrt(1 - (F_x / F_x,peak)^2)}, the friction
     * ellipse; zero where F_x takes all.
     *
     * @param longitudinalForceN  F_x, N, either sign
     */
    public double lateralGiven(
            double slipAngle, double longitudinalForceN, double loadN, double inclination, double pressureShare) {
        return lateral(slipAngle, loadN, inclination, pressureShare)
                * lateralShareLeft(longitudinalForceN, loadN, inclination, pressureShare);
    }

    /** Returns the derivative of {@link #lateralGiven} by the slip angle, N/rad; negative beyond the peak. */
    public double lateralSlopeGiven(
            double slipAngle, double longitudinalForceN, double loadN, double inclination, double pressureShare) {
        double peakSlip = unshiftedPeakSlip(loadN, pressureShare);
        double slip = slipAngle + shift(peakSlip, inclination);
        return lateralPeak(loadN, towardForce(inclination, slip), pressureShare)
                * lateralShape.slope(slip / peakSlip)
                / peakSlip
                * lateralShareLeft(longitudinalForceN, loadN, inclination, pressureShare);
    }

    /**
     * Returns the slip angle that gives a lateral force beside a longitudinal one, rad, on the rising side of the curve.
     *
     * <p>Where the force is more than the tyre has, the slip angle at the peak (of that sign) is returned; compare with
     * {@code lateralPeak * lateralShareLeft} to know.
     *
     * @param lateralForceN  F_y, N, either sign
     */
    public double slipAngleGiven(
            double lateralForceN, double longitudinalForceN, double loadN, double inclination, double pressureShare) {
        double peakSlip = unshiftedPeakSlip(loadN, pressureShare);
        double capacity = lateralPeak(loadN, towardForce(inclination, lateralForceN), pressureShare)
                * lateralShareLeft(longitudinalForceN, loadN, inclination, pressureShare);
        double share = capacity > 0.0 ? lateralForceN / capacity : Math.signum(lateralForceN);
        return peakSlip * lateralShape.slipShare(share) - shift(peakSlip, inclination);
    }

    /** Returns the share of lateral force left beside a longitudinal one, 0..1: {@code sqrt(1 - (F_x / F_x,peak)^2)}. */
    public double lateralShareLeft(double longitudinalForceN, double loadN, double inclination, double pressureShare) {
        if (longitudinalForceN == 0.0) {
            return 1.0;
        }
        double peak = longitudinalPeak(loadN, inclination, pressureShare);
        double rest = peak * peak - longitudinalForceN * longitudinalForceN;
        return rest > 0.0 ? Math.sqrt(rest) / peak : 0.0;
    }

    /** Returns load times relative friction, N: what the friction at nominal load multiplies. */
    private double equivalentLoad(double loadN) {
        double q = loadN / nominalLoadN;
        if (!(q > 0.0)) {
            return 0.0;
        }
        double s = loadSensitivity;
        double straight = 1.0 + s;
        if (straight - 2.0 * s * q >= LEAST_FACTOR) {
            return loadN * (straight - s * q);
        }
        double knee = (straight - LEAST_FACTOR) / (2.0 * s);
        return nominalLoadN * (knee * (straight - s * knee) + LEAST_FACTOR * (q - knee));
    }

    private double unshiftedPeakSlip(double loadN, double pressureShare) {
        double q = Math.max(LEAST_RELATIVE_LOAD, loadN / nominalLoadN);
        double byLoad = peakSlipAngleExponent == 0.0 ? 1.0 : Math.max(LEAST_FACTOR, Math.pow(q, peakSlipAngleExponent));
        return peakSlipAngle * byLoad / pressure.stiffnessFactor(pressureShare);
    }

    private double shift(double peakSlip, double inclination) {
        double greatest = GREATEST_SHIFT * peakSlip;
        return Math.max(-greatest, Math.min(greatest, -camber.thrustSlipPerRad() * inclination));
    }

    private static double towardForce(double inclination, double force) {
        return force < 0.0 ? -inclination : inclination;
    }
}
