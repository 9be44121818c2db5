package setwright.core.car.model;

/** What a driver asks of the car, in time. */
public interface Controls {

    /** Returns the mean angle of the front wheels, rad, left positive, at a time, s. */
    double steerRad(double timeS);

    /**
     * Returns the force that the engine is asked for at the driven wheels, N; negative on the overrun. The car gives no more than
     * its power train has.
     */
    double engineN(double timeS);

    /** Returns the force that all brakes together are asked for, N, &gt;= 0. */
    double brakeN(double timeS);

    /** Returns controls that stay as they are. */
    static Controls held(double steerRad, double engineN, double brakeN) {
        return new Controls() {
            @Override
            public double steerRad(double timeS) {
                return steerRad;
            }

            @Override
            public double engineN(double timeS) {
                return engineN;
            }

            @Override
            public double brakeN(double timeS) {
                return brakeN;
            }
        };
    }
}
