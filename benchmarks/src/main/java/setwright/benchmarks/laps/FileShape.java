package setwright.benchmarks.laps;

import setwright.core.simulation.logger.ChannelSet;

/**
 * How large a measured file is.
 *
 * @param laps     after the out lap, &gt;= 1
 * @param rateHz   rows per second, 10 to 500
 * @param columns  in all, 10 or more; what the simulation has not is filled with noise that nothing reads
 */
public record FileShape(int laps, double rateHz, int columns) {
    /** Of most measurements: a good logger's. */
    public static final double USUAL_HZ = 100.0;
    /** Of most measurements. */
    public static final int USUAL_COLUMNS = 40;

    private static final int FEWEST_COLUMNS = 10;
    private static final int USUAL_CHANNELS_FROM = 15;
    private static final int ALL_CHANNELS_FROM = 30;

    public FileShape {
        if (laps < 1 || !(rateHz >= 10.0 && rateHz <= 500.0) || columns < FEWEST_COLUMNS) {
            throw new IllegalArgumentException("a measured file has a lap, 10 to 500 rows a second and "
                    + FEWEST_COLUMNS + " columns or more, got " + laps + ", " + rateHz + " Hz, " + columns);
        }
    }

    /** Returns one of so many laps at the usual rate and width. */
    public static FileShape of(int laps) {
        return new FileShape(laps, USUAL_HZ, USUAL_COLUMNS);
    }

    /** Returns which quantities are recorded; with the two of a position they fit into the columns. */
    ChannelSet channels() {
        if (columns >= ALL_CHANNELS_FROM) {
            return ChannelSet.FULL;
        }
        return columns >= USUAL_CHANNELS_FROM ? ChannelSet.USUAL : ChannelSet.MINIMAL;
    }

    /** Returns the file's name. */
    public String fileName() {
        return "laps-" + laps + "-" + Math.round(rateHz) + "hz-" + columns + "col.csv";
    }
}
