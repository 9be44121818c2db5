package setwright.core.judgement;

import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.Pool;

/** The corners a finding holds for. */
public enum SpeedRange {
    LOW("low"),
    HIGH("high"),
    ALL("all");

    private final String words;

    SpeedRange(String words) {
        this.words = words;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }

    /** Returns its corners in words, to stand after a preposition. */
    public String corners() {
        return switch (this) {
            case ALL -> "all corners";
            case LOW -> "the slower corners";
            case HIGH -> "the faster corners";
        };
    }

    /** Returns the pool of a phase at these speeds. */
    public Pool pool(Phase phase) {
        return switch (this) {
            case ALL -> Pool.all(phase);
            case LOW -> Pool.of(phase, SpeedClass.LOW);
            case HIGH -> Pool.of(phase, SpeedClass.HIGH);
        };
    }

    /** Tells whether corners of a class are among them; medium ones belong to all only. */
    public boolean takes(SpeedClass speed) {
        return switch (this) {
            case ALL -> true;
            case LOW -> speed == SpeedClass.LOW;
            case HIGH -> speed == SpeedClass.HIGH;
        };
    }
}
