package setwright.core.trial;

/** What to do with a change that was tried. */
public enum TrialVerdict {
    KEEP("keep"),
    UNDO("undo"),
    /** Whatever there is, it is too small to matter. */
    NO_DIFFERENCE("no difference"),
    UNDECIDED("undecided");

    private final String words;

    TrialVerdict(String words) {
        this.words = words;
    }

    /** Returns the words that people read. */
    public String words() {
        return words;
    }
}
