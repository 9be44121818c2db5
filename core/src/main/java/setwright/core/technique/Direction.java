package setwright.core.technique;

/** Which way a lever is to be moved. */
public enum Direction {
    MORE,
    LESS,
    /** Physics has a path each way; the laps decide. */
    EITHER,
    /** No path from this lever to that problem, or practice and physics contradict each other. */
    NONE;

    /** Tells whether a slope of the problem's size over the lever can be used: more of the lever with less of the problem, or the other way. */
    boolean admits(double slope) {
        return switch (this) {
            case MORE -> slope < 0.0;
            case LESS -> slope > 0.0;
            case EITHER -> true;
            case NONE -> false;
        };
    }
}
