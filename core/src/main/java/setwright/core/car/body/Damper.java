package setwright.core.car.body;

/**
 * A damper as felt at the wheel: a slow and a fast slope each for bump and rebound, joined at a knee.
 *
 * @param bumpSlow     slope for slow bump, N s/m, &gt;= 0
 * @param bumpFast     slope beyond the knee, N s/m, &gt;= 0
 * @param reboundSlow  slope for slow rebound, N s/m, &gt;= 0
 * @param reboundFast  slope beyond the knee, N s/m, &gt;= 0
 * @param kneeMps      wheel speed at which slow turns into fast, m/s, &gt; 0
 */
public record Damper(double bumpSlow, double bumpFast, double reboundSlow, double reboundFast, double kneeMps) {

    /** Returns the force that resists compression, N, at a speed of compression, m/s (negative in rebound). */
    public double force(double compressionMps) {
        return slope(compressionMps) * compressionMps;
    }

    /**
     * Returns force over speed, N s/m: the slope of the chord from rest, which an implicit step needs.
     *
     * @param compressionMps  speed of compression, m/s; negative in rebound
     */
    public double slope(double compressionMps) {
        double slow = compressionMps >= 0.0 ? bumpSlow : reboundSlow;
        double size = Math.abs(compressionMps);
        if (size <= kneeMps) {
            return slow;
        }
        double fast = compressionMps >= 0.0 ? bumpFast : reboundFast;
        return (slow * kneeMps + fast * (size - kneeMps)) / size;
    }

    /** Returns this damper with every slope multiplied. */
    public Damper times(double factor) {
        return new Damper(factor * bumpSlow, factor * bumpFast, factor * reboundSlow, factor * reboundFast, kneeMps);
    }
}
