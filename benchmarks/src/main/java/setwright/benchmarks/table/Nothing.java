package setwright.benchmarks.table;

/** A program that does nothing: what the start of a Java machine takes. */
public final class Nothing {
    private Nothing() {}

    /** Does nothing. */
    public static void main(String[] arguments) {}
}
