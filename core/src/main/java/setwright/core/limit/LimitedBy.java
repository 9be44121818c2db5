package setwright.core.limit;

/** What keeps a car from being faster. */
public enum LimitedBy {
    FRONT_AXLE("front axle"),
    REAR_AXLE("rear axle"),
    /** Front and rear alike: a car that is one point. */
    ALL_TYRES("tyres"),
    ENGINE("engine");

    private final String words;

    LimitedBy(String words) {
        this.words = words;
    }

    /** Returns what a person reads. */
    public String words() {
        return words;
    }
}
