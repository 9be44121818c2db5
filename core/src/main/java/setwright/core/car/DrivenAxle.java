package setwright.core.car;

/** Which wheels the engine drives. */
public enum DrivenAxle {
    FRONT,
    REAR,
    ALL
}
