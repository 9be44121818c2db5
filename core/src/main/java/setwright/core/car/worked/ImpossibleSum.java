package setwright.core.car.worked;

/** No car is like that: the values, each possible by itself, do not go together. The message says which and what to do. */
public final class ImpossibleSum extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String why;

    ImpossibleSum(String why) {
        super(why);
        this.why = why;
    }

    ImpossibleSum(IllegalArgumentException cause) {
        super(cause);
        this.why = String.valueOf(cause.getMessage());
    }

    /** Returns what does not go together, without a capital letter. */
    public String why() {
        return why;
    }
}
