package setwright.core.car.figures;

/**
 * The car in a steady corner without downforce, per 1 g of lateral acceleration.
 *
 * @param gradientRad     roll angle at 1 g, rad
 * @param front           load moved from the inner to the outer wheel of the front axle at 1 g
 * @param rear            of the rear axle
 * @param stiffnessShare  front share of the roll stiffness of springs and bars, 0..1
 */
public record RollFigures(double gradientRad, Transfer front, Transfer rear, double stiffnessShare) {

    /**
     * What moves the load of one axle at 1 g.
     *
     * @param elasticN    through springs, bar and tyres with the roll angle, N
     * @param geometricN  at once through the links, by the roll centre's height, N
     * @param unsprungN   of the wheels' own mass, N
     * @param liftG       lateral acceleration at which the inner wheel leaves the ground, g; infinite when it never does
     */
    public record Transfer(double elasticN, double geometricN, double unsprungN, double liftG) {
        /** Returns the whole, N. */
        public double totalN() {
            return elasticN + geometricN + unsprungN;
        }
    }

    /** Returns the front axle's share of the lateral load transfer, 0..1. */
    public double transferShare() {
        return front.totalN() / (front.totalN() + rear.totalN());
    }
}
