package setwright.core.car.sums;

/**
 * Steady-state lateral load transfer of each axle and the roll of the body: a sprung mass that rolls about the line through
 * both roll centres, and an unsprung mass at each axle.
 *
 * <pre>
 * d    = h_s - (z_f + (z_r - z_f) a_s / L)
 * phi  = m_s a_y d / (K_f + K_r - m_s g d)
 * dF_f = (K_f phi + m_s a_y (b_s / L) z_f + m_uf a_y h_uf) / t_f,   the rear likewise
 * </pre>
 *
 * <p>The term {@code m_s g d} is the centre of gravity's shift towards the outer wheels. <b>Valid for</b> small roll angles,
 * all four wheels loaded, no banking. Transfers are positive from the inner to the outer wheel of that axle for positive
 * {@code a_y} (left turn, right wheels gain) and change sign with it.
 *
 * <p><b>Source:</b> W. F. Milliken, D. L. Milliken, <i>Race Car Vehicle Dynamics</i>, SAE, 1995, ch. 18 (formula from memory).
 *
 * @param body   the sprung mass
 * @param front  axle
 * @param rear   axle
 */
public record LateralTransfer(Body body, Axle front, Axle rear) {

    /**
     * The sprung mass.
     *
     * @param massKg        kg, &gt; 0
     * @param heightM       of its centre of gravity above the road, m, &gt; 0
     * @param toFrontAxleM  distance of its centre of gravity behind the front axle, m
     * @param toRearAxleM   distance of its centre of gravity ahead of the rear axle, m
     */
    public record Body(double massKg, double heightM, double toFrontAxleM, double toRearAxleM) {
        public Body {
            Require.positive("sprung mass", massKg, "kg");
            Require.positive("height of the sprung mass", heightM, "m");
            Require.positive("wheelbase", toFrontAxleM + toRearAxleM, "m");
        }

        /**
         * Returns what is left of a car without its axles.
         *
         * @param massKg        of the whole car, kg
         * @param heightM       of the whole car's centre of gravity, m
         * @param toFrontAxleM  from the whole car's centre of gravity, m
         * @param toRearAxleM   from the whole car's centre of gravity, m
         */
        public static Body of(
                double massKg, double heightM, double toFrontAxleM, double toRearAxleM, Axle front, Axle rear) {
            double sprung = massKg - front.unsprungKg() - rear.unsprungKg();
            double wheelbase = toFrontAxleM + toRearAxleM;
            double behindFront = (massKg * toFrontAxleM - rear.unsprungKg() * wheelbase) / sprung;
            double moment = massKg * heightM
                    - front.unsprungKg() * front.unsprungHeightM()
                    - rear.unsprungKg() * rear.unsprungHeightM();
            return new Body(sprung, moment / sprung, behindFront, wheelbase - behindFront);
        }

        double wheelbaseM() {
            return toFrontAxleM + toRearAxleM;
        }
    }

    /**
     * An axle.
     *
     * @param rollStiffness     of springs and bar at the wheels, N m/rad, &gt;= 0
     * @param rollCentreM       height of the roll centre above the road, m; negative below it
     * @param trackM            m, &gt; 0
     * @param unsprungKg        mass of both wheels with what moves with them, kg, &gt;= 0
     * @param unsprungHeightM   of that mass's centre above the road, m
     */
    public record Axle(
            double rollStiffness, double rollCentreM, double trackM, double unsprungKg, double unsprungHeightM) {
        public Axle {
            Require.notNegative("roll stiffness", rollStiffness, "N m/rad");
            Require.finite("roll centre height", rollCentreM, "m");
            Require.positive("track", trackM, "m");
            Require.notNegative("unsprung mass", unsprungKg, "kg");
            Require.notNegative("height of the unsprung mass", unsprungHeightM, "m");
        }
    }

    public LateralTransfer {
        double stiffness = front.rollStiffness() + rear.rollStiffness();
        double falling = body.massKg() * Gravity.STANDARD_MPS2 * arm(body, front, rear);
        if (!(stiffness > falling)) {
            throw new IllegalArgumentException("the body falls over: its roll stiffness of " + stiffness
                    + " N m/rad must exceed m_s g d = " + falling + " N m/rad");
        }
    }

    private static double arm(Body body, Axle front, Axle rear) {
        double axis = front.rollCentreM()
                + (rear.rollCentreM() - front.rollCentreM()) * body.toFrontAxleM() / body.wheelbaseM();
        return body.heightM() - axis;
    }

    /** Returns the height of the sprung mass's centre above the roll axis, m; negative below it. */
    public double armM() {
        return arm(body, front, rear);
    }

    /** Returns how far the body leans outward, rad, positive for positive {@code leftMps2}. */
    public double rollRad(double leftMps2) {
        double falling = body.massKg() * Gravity.STANDARD_MPS2 * armM();
        return body.massKg() * leftMps2 * armM() / (front.rollStiffness() + rear.rollStiffness() - falling);
    }

    /** Returns the load moved from the inner to the outer front wheel, N. */
    public double frontN(double leftMps2) {
        return axle(front, body.toRearAxleM() / body.wheelbaseM(), leftMps2);
    }

    /** Returns the load moved from the inner to the outer rear wheel, N. */
    public double rearN(double leftMps2) {
        return axle(rear, body.toFrontAxleM() / body.wheelbaseM(), leftMps2);
    }

    private double axle(Axle axle, double sprungShare, double leftMps2) {
        double throughSprings = axle.rollStiffness() * rollRad(leftMps2);
        double throughLinks = body.massKg() * sprungShare * leftMps2 * axle.rollCentreM();
        double unsprung = axle.unsprungKg() * leftMps2 * axle.unsprungHeightM();
        return (throughSprings + throughLinks + unsprung) / axle.trackM();
    }

    /** Returns the front axle's share of both axles' transfer; the same at every acceleration. */
    public double frontShare() {
        return frontN(1.0) / (frontN(1.0) + rearN(1.0));
    }
}
