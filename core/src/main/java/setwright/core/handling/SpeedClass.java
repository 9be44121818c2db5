package setwright.core.handling;

/** How much the air matters in a corner. */
public enum SpeedClass {
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String words;

    SpeedClass(String words) {
        this.words = words;
    }

    /** Returns the word a person reads. */
    public String words() {
        return words;
    }
}
