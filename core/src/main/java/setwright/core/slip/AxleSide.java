package setwright.core.slip;

/** An axle of the car. */
public enum AxleSide {
    FRONT("front"),
    REAR("rear");

    private final String words;

    AxleSide(String words) {
        this.words = words;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
