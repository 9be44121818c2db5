package setwright.core.car.worked;

/** Where a value that goes into a sum comes from. */
public enum Origin {
    GIVEN("given"),
    SHEET("car sheet"),
    /** Nobody said it. */
    ASSUMED("assumed");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /** Returns the origin as people call it. */
    public String words() {
        return words;
    }
}
