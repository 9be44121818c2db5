package setwright.app.evidence;

import setwright.core.car.CarSheet;
import setwright.core.circuit.Corner;
import setwright.core.handling.HandlingTrace;

/** The traces drawn over distance. Steering is turned so that turning into the corner is positive. */
public enum TraceKind {
    /** m/s. */
    SPEED,
    /** Steering wheel, rad. */
    STEERING,
    /** 0..1. */
    THROTTLE,
    /** 0..1. */
    BRAKE,
    /** rad, positive: understeer. */
    BALANCE,
    /** The car's own balance, rad. */
    REFERENCE;

    double value(HandlingTrace trace, CarSheet car, Corner corner, int sample) {
        return switch (this) {
            case SPEED -> trace.speed().get(sample);
            case STEERING -> trace.steer().get(sample) * car.steeringRatio() * corner.sign();
            case THROTTLE -> trace.throttle().get(sample);
            case BRAKE -> trace.brake().get(sample);
            case BALANCE -> trace.balance().get(sample);
            case REFERENCE -> trace.reference().get(sample);
        };
    }
}
