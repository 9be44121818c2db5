package setwright.core.simulation.vehicle;

import setwright.core.car.model.CarModel;

/**
 * Fuel on board and what it weighs. The tank lies at the centre of gravity: burning fuel moves nothing but mass.
 *
 * @param startKg   at the start, kg
 * @param kgPerM    burnt per metre, kg/m
 */
public record Tank(double startKg, double kgPerM) {

    /** A car that burns nothing. */
    public static final Tank CONSTANT = new Tank(0.0, 0.0);

    public boolean burns() {
        return kgPerM > 0.0;
    }

    /** Returns the fuel left after a distance, kg. */
    public double leftKg(double distanceM) {
        return Math.max(0.0, startKg - kgPerM * distanceM);
    }

    /** Returns a car after a distance, m. */
    public CarModel after(CarModel car, double distanceM) {
        double burnt = startKg - leftKg(distanceM);
        return burnt <= 0.0 ? car : car.with(car.body().withMass(car.body().massKg() - burnt));
    }
}
