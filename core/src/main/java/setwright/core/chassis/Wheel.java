package setwright.core.chassis;

import setwright.core.recording.Quantity;

/** A wheel of the car. */
public enum Wheel {
    FRONT_LEFT("front left"),
    FRONT_RIGHT("front right"),
    REAR_LEFT("rear left"),
    REAR_RIGHT("rear right");

    private final String words;

    Wheel(String words) {
        this.words = words;
    }

    /** Returns the words a person reads. */
    public String words() {
        return words;
    }

    /** Tells whether it is one of the front axle. */
    public boolean isFront() {
        return this == FRONT_LEFT || this == FRONT_RIGHT;
    }

    /** Returns the quantity of a family of four, such as {@code SUSPENSION}, at this wheel. */
    public Quantity of(String family) {
        return Quantity.valueOf(family + "_" + name());
    }
}
