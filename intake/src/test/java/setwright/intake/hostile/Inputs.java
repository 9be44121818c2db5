package setwright.intake.hostile;

/** How many damaged inputs are tried: 2,000 in the check, 20,000 in its nightly form ({@code -Dsetwright.nightly=true}). */
public final class Inputs {
    private static final int USUAL = 2000;
    private static final int NIGHTLY = 20_000;

    private Inputs() {}

    /** Returns a share of them. */
    public static int share(double share) {
        return (int) Math.round(share * (Boolean.getBoolean("setwright.nightly") ? NIGHTLY : USUAL));
    }
}
