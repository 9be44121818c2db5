package setwright.app.truthbench;

/** What a case puts before the program. */
enum Kind {
    BALANCED("balanced"),
    SETUP("setup"),
    /** The car is at fault in something that its sheet does not hold. */
    UNSEEN("unseen"),
    TECHNIQUE("technique"),
    INCONSISTENT("inconsistent");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    /** Tells whether the car is at fault. */
    boolean ofTheCar() {
        return this == SETUP || this == UNSEEN;
    }

    String words() {
        return words;
    }
}
