package setwright.core.simulation.logger;

import static setwright.core.recording.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import setwright.core.recording.Quantity;

/** Which quantities a logger keeps. */
public enum ChannelSet {
    /** Speed, hands, yaw rate, pedals and a pulse at the start line. */
    MINIMAL(TIME, SPEED, STEERING_WHEEL_ANGLE, YAW_RATE, THROTTLE, BRAKE, LAP_TRIGGER),
    /** Accelerations, gear, engine and lap number besides. */
    USUAL(
            TIME,
            SPEED,
            STEERING_WHEEL_ANGLE,
            YAW_RATE,
            THROTTLE,
            BRAKE,
            LAP_TRIGGER,
            LAP_NUMBER,
            LONGITUDINAL_ACCELERATION,
            LATERAL_ACCELERATION,
            GEAR,
            ENGINE_SPEED),
    /** Wheels, suspension, distance and fuel besides. */
    FULL(
            TIME,
            SPEED,
            STEERING_WHEEL_ANGLE,
            YAW_RATE,
            THROTTLE,
            BRAKE,
            LAP_TRIGGER,
            LAP_NUMBER,
            LAP_DISTANCE,
            LONGITUDINAL_ACCELERATION,
            LATERAL_ACCELERATION,
            VERTICAL_ACCELERATION,
            GEAR,
            ENGINE_SPEED,
            WHEEL_SPEED_FRONT_LEFT,
            WHEEL_SPEED_FRONT_RIGHT,
            WHEEL_SPEED_REAR_LEFT,
            WHEEL_SPEED_REAR_RIGHT,
            SUSPENSION_FRONT_LEFT,
            SUSPENSION_FRONT_RIGHT,
            SUSPENSION_REAR_LEFT,
            SUSPENSION_REAR_RIGHT,
            FUEL_MASS),
    /** Pressures of both brake circuits and ride heights of both axles besides. */
    RICH(FULL, BRAKE_PRESSURE_FRONT, BRAKE_PRESSURE_REAR, RIDE_HEIGHT_FRONT, RIDE_HEIGHT_REAR);

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<Quantity> quantities;

    ChannelSet(Quantity... quantities) {
        this.quantities = List.of(quantities);
    }

    ChannelSet(ChannelSet other, Quantity... more) {
        List<Quantity> all = new ArrayList<>(other.quantities);
        all.addAll(List.of(more));
        this.quantities = List.copyOf(all);
    }

    /** Returns the quantities, with those of a position. */
    List<Quantity> with(LoggerPlan.Place place) {
        List<Quantity> all = new ArrayList<>(quantities);
        switch (place) {
            case NONE -> {}
            case PLANE -> all.addAll(List.of(POSITION_X, POSITION_Y));
            case GLOBE -> all.addAll(List.of(LATITUDE, LONGITUDE));
        }
        return all;
    }
}
