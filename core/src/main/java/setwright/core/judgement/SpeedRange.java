package setwright.core.judgement;

/** The corners a finding holds for. */
public enum SpeedRange {
    LOW("low"),
    HIGH("high"),
    ALL("all");

    private final String words;

    SpeedRange(String words) {
        this.words = words;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
