package setwright.core.car.sums;

/**
 * Braking in a straight line at the limit of grip, with downforce and drag: {@code a(v) = mu g + c v^2},
 * {@code c = (mu k_z + k_x) / m}.
 *
 * <p><b>Source:</b> that equation of motion, integrated in closed form.
 *
 * @param grip  what the car's grip and air give
 */
public record BrakingRun(Cornering grip) {
    private double constant() {
        return grip.friction() * Gravity.STANDARD_MPS2;
    }

    private double perSpeedSquared() {
        return (grip.friction() * grip.downforceFactor() + grip.dragFactor()) / grip.massKg();
    }

    /** Returns the deceleration at a speed (m/s), m/s2. */
    public double decelerationMps2(double speedMps) {
        return constant() + perSpeedSquared() * speedMps * speedMps;
    }

    /** Returns the distance from one speed down to another (m/s), m. */
    public double distanceM(double fromMps, double toMps) {
        double c = perSpeedSquared();
        double squares = fromMps * fromMps - toMps * toMps;
        if (c == 0.0) {
            return squares / (2.0 * constant());
        }
        return Math.log1p(c * squares / decelerationMps2(toMps)) / (2.0 * c);
    }

    /** Returns the time from one speed down to another (m/s), s. */
    public double timeS(double fromMps, double toMps) {
        double c = perSpeedSquared();
        if (c == 0.0) {
            return (fromMps - toMps) / constant();
        }
        double scale = Math.sqrt(c / constant());
        return (Math.atan(fromMps * scale) - Math.atan(toMps * scale)) / Math.sqrt(c * constant());
    }
}
