package setwright.core.simulation.layout;

/**
 * An unevenness at a fixed place of a circuit: the road rises and falls again along a full cosine wave, so that neither height nor
 * slope jumps. A kerb is one under the wheels of one side; a dip has a negative height.
 *
 * @param stationM  where it begins, along the line from the start line, m
 * @param lengthM   m, &gt; 0
 * @param heightM   of its middle, m
 * @param wheels    that roll over it
 */
public record Bump(double stationM, double lengthM, double heightM, Wheels wheels) {

    /** Which wheels of each axle roll over it. */
    public enum Wheels {
        LEFT,
        RIGHT,
        BOTH
    }

    public Bump {
        if (!(lengthM > 0.0 && stationM >= 0.0 && Math.abs(heightM) < lengthM)) {
            throw new IllegalArgumentException(
                    "a bump needs a station from 0 m on, a length and a height below its length," + " got station "
                            + stationM + " m, length " + lengthM + " m, height " + heightM + " m");
        }
    }

    /**
     * Returns the height of the road at a station, m; 0 beside the bump.
     *
     * @param stationM     m, any; taken round the lap
     * @param lapLengthM   length of the circuit, m
     */
    public double heightAt(double stationM, double lapLengthM) {
        double along = along(stationM, lapLengthM);
        return along < lengthM ? 0.5 * heightM * (1.0 - Math.cos(2.0 * Math.PI * along / lengthM)) : 0.0;
    }

    /** Returns the slope of the road at a station, m per m; see {@link #heightAt}. */
    public double slopeAt(double stationM, double lapLengthM) {
        double along = along(stationM, lapLengthM);
        double wave = 2.0 * Math.PI / lengthM;
        return along < lengthM ? 0.5 * heightM * wave * Math.sin(wave * along) : 0.0;
    }

    /** Tells whether the wheels of the left side (or the right one) roll over it. */
    public boolean isUnder(boolean left) {
        return wheels == Wheels.BOTH || wheels == (left ? Wheels.LEFT : Wheels.RIGHT);
    }

    private double along(double station, double lap) {
        double since = station - stationM;
        return since - lap * Math.floor(since / lap);
    }
}
