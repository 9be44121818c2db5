package setwright.core.car.setup;

/** Which axle an item acts on. */
public enum SetupPlace {
    FRONT("front"),
    REAR("rear"),
    BOTH("both"),
    DRIVEN("driven");

    private final String words;

    SetupPlace(String words) {
        this.words = words;
    }

    /** Returns the place in lower case, as in a table. */
    public String words() {
        return words;
    }
}
