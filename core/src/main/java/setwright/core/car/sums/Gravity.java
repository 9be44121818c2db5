package setwright.core.car.sums;

/** Standard acceleration of free fall. */
public final class Gravity {
    /** m/s2, exact. Source: BIPM, The International System of Units, 9th ed. 2019. */
    public static final double STANDARD_MPS2 = 9.80665;

    private Gravity() {}
}
