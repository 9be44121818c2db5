package setwright.core.simulation.logger;

/** How a logger tells where the car is. */
public enum PositionKind {
    NONE,
    /** Metres in the circuit's plane. */
    PLANE,
    /** Latitude and longitude, degrees. */
    EARTH
}
