package setwright.core.car.tyre;

/** Refuses a parameter outside its range, not-a-number included. */
final class Range {
    private Range() {}

    static void check(String what, double value, double least, double greatest) {
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(what + " must be " + least + " to " + greatest + ", got " + value);
        }
    }
}
