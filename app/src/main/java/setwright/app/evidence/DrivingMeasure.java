package setwright.app.evidence;

import java.util.OptionalDouble;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Repeatability.Measure;

/** What is shown lap by lap at each corner: where the driver did what, and how slow it got. */
public enum DrivingMeasure {
    BRAKE_POINT(Measure.BRAKE_POINT) {
        @Override
        public OptionalDouble of(CornerPass pass) {
            return pass.events().brakeOn();
        }
    },
    TURN_IN(Measure.TURN_IN) {
        @Override
        public OptionalDouble of(CornerPass pass) {
            return pass.events().turnIn();
        }
    },
    /** In m/s. */
    LOWEST_SPEED(Measure.LOWEST_SPEED) {
        @Override
        public OptionalDouble of(CornerPass pass) {
            return OptionalDouble.of(pass.lowestSpeedMps());
        }
    },
    PICK_UP(Measure.THROTTLE_PICK_UP) {
        @Override
        public OptionalDouble of(CornerPass pass) {
            return pass.events().throttlePickUp();
        }
    };

    private final Measure measure;

    DrivingMeasure(Measure measure) {
        this.measure = measure;
    }

    /** Returns the measure that the judgement knows it by. */
    public Measure measure() {
        return measure;
    }

    /** Returns its value in a pass, in m along the reference line or m/s; empty when it did not happen. */
    public abstract OptionalDouble of(CornerPass pass);
}
