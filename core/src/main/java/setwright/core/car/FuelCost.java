package setwright.core.car;

/*
 * Design note. Laps alone cannot tell what fuel costs: within a run it burns as they go by, like everything else that goes by with them.
 * It is known from elsewhere. Common practice says 0.03 s a kilogram on a lap of 90 s, for cars of about 750 kg: a quarter of the share by which
 * the mass grows. A point-mass lap, whose tyres grip in proportion to their load, gives 0.06 to 0.12 of it. The middle and half the distance
 * between the two stand below.
 */

/** What fuel on board makes of a lap time: share of the time for a share of the mass. */
public final class FuelCost {
    /** Share of the lap time for a share of the mass. */
    public static final double SHARE = 0.16;
    /** Its standard deviation. */
    public static final double DOUBT = 0.08;

    private FuelCost() {}
}
