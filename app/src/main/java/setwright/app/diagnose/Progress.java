package setwright.app.diagnose;

/** Told how far a piece of work has come. */
public interface Progress extends AutoCloseable {
    /** A step begins. */
    void step(String what);

    /** The work is over, done or not. */
    @Override
    default void close() {}

    /** Tells nobody. */
    static Progress silent() {
        return what -> {};
    }
}
