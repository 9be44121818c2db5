package setwright.core.simulation.driver;

/** What hands or feet do when an axle slides. */
public enum Reaction {
    /** The hands only follow the road. */
    NONE,
    /** The wheel is held still until the car has settled. */
    HOLD,
    /** The wheel is turned against the slide. */
    CORRECT,
    /** More lock is wound on although the front already slides. */
    WIND_ON,
    /** The throttle is lifted. */
    LIFT
}
