package setwright.core.judgement;

/**
 * What one typical setup change does, to hold scatter against.
 *
 * <p>A tenth of the roll stiffness moved from one axle to the other (a bar from soft to hard, about) shifts the balance
 * angle by 0.56 degrees at nine tenths of the limit and costs or gives 0.096 m/s² of 9.02 m/s² of lateral grip: four-wheel
 * steady state with the tyre set of Bakker, Nyborg and Pacejka (SAE 870421, 1987). A cornering speed goes with the root
 * of grip, and a lap of which some 60 % of the time is limited by grip (common practice), with 0.6 of that.
 */
public final class Yardstick {
    /** Change of the balance angle, rad. */
    public static final double BALANCE_RAD = Math.toRadians(0.56);
    /** Change of lap time as a share of it. */
    public static final double LAP_TIME_SHARE = 0.6 * 0.5 * 0.096 / 9.02;

    private Yardstick() {}
}
