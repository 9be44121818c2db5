package setwright.core.simulation.logger;

/** How much a logger records; each set holds those before it. */
public enum ChannelSet {
    /** Speed, hands, pedals, yaw rate, start line. */
    MINIMAL,
    /** Also accelerations, gear, engine speed, position, lap number. */
    USUAL,
    /** Also wheel speeds, suspension travel, fuel. */
    FULL
}
