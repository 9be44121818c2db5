package setwright.core.car.drive;

/**
 * Brake balance.
 *
 * @param frontShare  of the brake force, 0..1
 */
public record Brakes(double frontShare) {}
