package setwright.intake.hostile;

/** How many damaged inputs are tried: 2,000 in the check, and as many as are wanted with {@code -Dsetwright.fuzz=20000}. */
public final class Inputs {
    private static final int USUAL = 2000;

    private Inputs() {}

    /** Returns a share of them. */
    public static int share(double share) {
        return (int) Math.round(share * Integer.getInteger("setwright.fuzz", USUAL));
    }
}
