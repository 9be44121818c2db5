package setwright.core.car.tyre;

/**
 * Force of the road on one tyre.
 *
 * @param longitudinalN  along the wheel, N, positive driving
 * @param lateralN       across it, N, with the sign of the slip angle
 */
public record TyreForce(double longitudinalN, double lateralN) {

    /** Returns the size of the force, N. */
    public double sizeN() {
        return Math.hypot(longitudinalN, lateralN);
    }
}
