package setwright.core.handling;

/**
 * How fast a corner is, by its lowest speed. Downforce grows with v², so that what the springs do shows in slow corners
 * and what the wings do, in fast ones.
 */
public enum SpeedClass {
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    /** Below it a moderate wing carries less than a tenth of the weight (orientation, common practice). */
    private static final double LOW_BELOW_MPS = 26.0;
    /** Above it, more than a fifth. */
    private static final double HIGH_ABOVE_MPS = 40.0;

    private final String words;

    SpeedClass(String words) {
        this.words = words;
    }

    /** Returns the word a person reads. */
    public String words() {
        return words;
    }

    /** Returns the class of a corner with this lowest speed, m/s. */
    public static SpeedClass of(double lowestSpeedMps) {
        if (lowestSpeedMps < LOW_BELOW_MPS) {
            return LOW;
        }
        return lowestSpeedMps > HIGH_ABOVE_MPS ? HIGH : MEDIUM;
    }
}
