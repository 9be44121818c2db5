package setwright.core.simulation.vehicle;

/**
 * What turns and rolls, beyond what {@link setwright.core.car.model.CarModel} holds.
 *
 * @param wheelInertiaKgM2    of one wheel with its brake disc, kg m²
 * @param engineInertiaKgM2   of engine, clutch and gearbox at engine speed, kg m²
 * @param relaxationM         rolling length in which a tyre builds up its lateral force, m
 * @param shiftS              time without drive during a change of gear, s
 */
public record RunningGear(double wheelInertiaKgM2, double engineInertiaKgM2, double relaxationM, double shiftS) {

    /** Returns values of a racing car with a sequential gearbox (common practice; relaxation: Pacejka, value from memory). */
    public static RunningGear usual() {
        return new RunningGear(1.1, 0.09, 0.35, 0.06);
    }
}
