package setwright.core.handling;

/** What the pedals say about the tyres. */
final class Pedals {
    /** A pedal is pressed above this share; drag on a brake sensor or a resting foot lies below (common practice). */
    static final double PRESSED = 0.05;

    private Pedals() {}

    /**
     * Returns the part of the longitudinal acceleration that brakes or engine put through the tyres, m/s²: drag slows a
     * car too, but uses no grip.
     */
    static double throughTyres(double brake, double throttle, double forwardMps2) {
        if (brake > PRESSED) {
            return Math.min(forwardMps2, 0.0);
        }
        return throttle > PRESSED ? Math.max(forwardMps2, 0.0) : 0.0;
    }
}
