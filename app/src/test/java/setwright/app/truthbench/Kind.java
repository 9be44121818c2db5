package setwright.app.truthbench;

/** What a case puts before the program. */
enum Kind {
    BALANCED("balanced"),
    SETUP("setup"),
    TECHNIQUE("technique"),
    INCONSISTENT("inconsistent");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
