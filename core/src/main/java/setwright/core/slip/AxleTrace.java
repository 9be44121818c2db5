package setwright.core.slip;

import setwright.core.recording.Channel;

/**
 * How hard each axle worked, at every sample of a recording; NaN where unknown. Angles with ISO 8855 signs, slip angles with the
 * sign of the force that they make (left positive).
 *
 * @param sideslip     angle of the velocity to the car's axis at the centre of gravity, rad
 * @param sideslipSd   its standard deviation, rad: what the filter believes and what a single-track car leaves out
 * @param frontSlip    slip angle of the front axle, rad
 * @param rearSlip     of the rear axle
 * @param frontUse     slip over slip at the peak, along and across together, &gt;= 0; 1 at the peak, more beyond
 * @param rearUse      of the rear axle
 * @param yawMeasured  whether yaw rate was recorded; without it sideslip is what steady cornering would need
 * @param lateralMeasured  whether lateral acceleration was recorded; else it is speed times yaw rate
 */
public record AxleTrace(
        Channel sideslip,
        Channel sideslipSd,
        Channel frontSlip,
        Channel rearSlip,
        Channel frontUse,
        Channel rearUse,
        boolean yawMeasured,
        boolean lateralMeasured) {}
