package setwright.core.car.model;

import setwright.core.car.CarSheet;

/**
 * Middling values of a kind of racing car, for what its sheet does not say. Common practice; the spreads that go with them are in
 * {@link CarPrior}.
 *
 * @param friction          lateral friction of its tyres at their usual load
 * @param liftAt50          downforce over weight at 50 m/s
 * @param dragM2            drag area, m²
 * @param powerWPerKg       engine power over mass, W/kg
 * @param rideHz            ride frequency where no spring rate is given, Hz
 * @param groundShare       share of the downforce that grows as the ground comes near
 */
record KindOfCar(
        double friction, double liftAt50, double dragM2, double powerWPerKg, double rideHz, double groundShare) {

    static KindOfCar of(CarSheet sheet) {
        return switch (sheet.downforce()) {
            case STRONG -> new KindOfCar(1.6, 0.7, 1.0, 320.0, 4.0, 0.5);
            case MODERATE -> new KindOfCar(1.45, 0.25, 0.9, 280.0, 2.9, 0.4);
            case NONE -> new KindOfCar(1.3, 0.0, 0.75, 200.0, 2.2, 0.0);
        };
    }
}
