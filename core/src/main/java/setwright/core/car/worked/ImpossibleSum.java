package setwright.core.car.worked;

/** No car is like that: the values, each possible by itself, do not go together. The message says which and what to do. */
public final class ImpossibleSum extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ImpossibleSum(String message) {
        super(message);
    }

    ImpossibleSum(IllegalArgumentException cause) {
        super(cause.getMessage(), cause);
    }
}
