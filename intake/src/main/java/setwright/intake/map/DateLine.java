package setwright.intake.map;

/** Longitudes of a circuit that lies across the meridian where the count jumps by a whole turn. */
public final class DateLine {
    private DateLine() {}

    /**
     * Returns the longitudes without the jump: each is taken in the turn that brings it nearest to the one before.
     *
     * @param longitudes  in any unit; NaN where missing
     * @param turn        a whole turn in that unit
     */
    public static double[] unwrapped(double[] longitudes, double turn) {
        double[] out = longitudes.clone();
        double last = Double.NaN;
        for (int i = 0; i < out.length; i++) {
            if (!Double.isNaN(out[i])) {
                out[i] -= Double.isNaN(last) ? 0.0 : turn * Math.rint((out[i] - last) / turn);
                last = out[i];
            }
        }
        return out;
    }
}
