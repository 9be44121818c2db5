package setwright.intake.table;

/** The numbers of a column, wherever they are kept; NaN where there is none. Immutable. */
public interface Numbers {
    /** Returns how many there are, with those that are missing. */
    int size();

    /** Returns number {@code index}, counted from 0. */
    double get(int index);

    /** Returns a copy of the numbers {@code from} (inclusive) to {@code to} (exclusive). */
    double[] copy(int from, int to);

    /** Returns how many are finite. */
    long finiteCount();

    /** Returns a part of them, {@code from} (inclusive) to {@code to} (exclusive), as numbers of their own. */
    default Numbers part(int from, int to) {
        return HeldNumbers.of(copy(from, to));
    }
}
