package setwright.core.handling;

/**
 * Sample indices of the driver's events in a pass; -1 when an event did not happen.
 *
 * @param turnIn  always present
 */
record PassMarks(
        int brakeOn,
        int brakePeak,
        int turnIn,
        int brakeOff,
        int highestSteer,
        int lowestSpeed,
        int throttlePickUp,
        int fullThrottle,
        int steerStraight) {}
