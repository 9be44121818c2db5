package setwright.core.car.sums;

/**
 * Road wheel angles, rad, on a circle so slow that no tyre slips. The radius is that of the middle of the rear axle.
 *
 * <p><b>Source:</b> geometry; {@code cot(outer) - cot(inner) = t / L} (Ackermann).
 */
public final class Ackermann {
    private Ackermann() {}

    /** Returns {@code L / R}, the small-angle form that the understeer gradient of ISO 8855 refers to. */
    public static double small(double wheelbaseM, double radiusM) {
        return wheelbaseM / radiusM;
    }

    /** Returns the angle of a single wheel in the middle of the front axle. */
    public static double middle(double wheelbaseM, double radiusM) {
        return Math.atan(wheelbaseM / radiusM);
    }

    /** Returns the inner wheel's angle; the radius exceeds half the track (distance of the steering axes at the road). */
    public static double inner(double wheelbaseM, double radiusM, double trackM) {
        return Math.atan(wheelbaseM / (radiusM - trackM / 2.0));
    }

    /** Returns the outer wheel's angle. */
    public static double outer(double wheelbaseM, double radiusM, double trackM) {
        return Math.atan(wheelbaseM / (radiusM + trackM / 2.0));
    }
}
