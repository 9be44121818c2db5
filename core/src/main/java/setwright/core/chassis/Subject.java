package setwright.core.chassis;

/** What is looked at. */
public enum Subject {
    DAMPERS("damper speed"),
    RIDE_HEIGHT("ride height and rake"),
    BRAKE_PRESSURE("brake pressures"),
    TREAD("temperature across the tread"),
    TYRE_PRESSURE("tyre pressure"),
    WARM_UP("tyre warm-up"),
    STEERING_TORQUE("steering torque"),
    DAY("track and air temperature");

    private final String words;

    Subject(String words) {
        this.words = words;
    }

    /** Returns the words a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
