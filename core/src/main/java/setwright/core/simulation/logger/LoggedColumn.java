package setwright.core.simulation.logger;

import setwright.core.recording.Quantity;

/** One column of a table that a logger wrote. Immutable. */
public final class LoggedColumn {
    private final Quantity quantity;
    private final String name;
    private final LoggedUnit unit;
    private final int decimals;
    private final double[] values;

    LoggedColumn(Quantity quantity, String name, LoggedUnit unit, int decimals, double[] values) {
        this.quantity = quantity;
        this.name = name;
        this.unit = unit;
        this.decimals = decimals;
        this.values = values;
    }

    /** Returns what it holds; a reader of the file is not told. */
    public Quantity quantity() {
        return quantity;
    }

    /** Returns its name without unit. */
    public String name() {
        return name;
    }

    /** Returns the unit of its values. */
    public LoggedUnit unit() {
        return unit;
    }

    /** Returns how many decimals are kept; values stand on them already. */
    public int decimals() {
        return decimals;
    }

    /** Returns how many values there are. */
    public int size() {
        return values.length;
    }

    /** Returns a value in its unit; NaN where the logger dropped out. */
    public double get(int row) {
        return values[row];
    }
}
