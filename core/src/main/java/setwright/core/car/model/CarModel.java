package setwright.core.car.model;

import setwright.core.car.DrivenAxle;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.body.Body;
import setwright.core.car.drive.Brakes;
import setwright.core.car.drive.Differential;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.sums.Gravity;

/**
 * A car with every number settled: one setup, one value for each uncertain parameter.
 *
 * @param body              masses and suspension
 * @param aero              downforce and drag
 * @param raisedFrontM      front ride height at rest over the reference of the aerodynamic map, m
 * @param raisedRearM       rear ride height at rest over the reference of the aerodynamic map, m
 * @param powertrain        engine to wheels
 * @param differential      of the driven axle
 * @param brakes            brake balance
 * @param drivenAxle        which wheels the engine drives
 * @param driveFront        share of the drive force on the front axle, 0..1
 * @param engineBrakingNm   torque of the engine with the throttle closed, N m
 * @param front             front tyres at their camber and pressure
 * @param rear              rear tyres at their camber and pressure
 * @param toeFrontRad       toe-in of one front wheel, rad
 * @param toeRearRad        toe-in of one rear wheel, rad
 * @param yawInertiaKgM2    kg m²
 * @param rollingShare      rolling resistance over load
 */
public record CarModel(
        Body body,
        AeroMap aero,
        double raisedFrontM,
        double raisedRearM,
        Powertrain powertrain,
        Differential differential,
        Brakes brakes,
        DrivenAxle drivenAxle,
        double driveFront,
        double engineBrakingNm,
        MountedTyre front,
        MountedTyre rear,
        double toeFrontRad,
        double toeRearRad,
        double yawInertiaKgM2,
        double rollingShare) {

    /** Some grip lengthwise is always left, or a differential had nothing to work with. */
    private static final double MOST_SIDEWAYS = 0.95;

    /** Returns the same car with another body. */
    public CarModel with(Body other) {
        return new CarModel(
                other,
                aero,
                raisedFrontM,
                raisedRearM,
                powertrain,
                differential,
                brakes,
                drivenAxle,
                driveFront,
                engineBrakingNm,
                front,
                rear,
                toeFrontRad,
                toeRearRad,
                yawInertiaKgM2,
                rollingShare);
    }

    /** Returns the resistance of air and rolling at a speed, N. */
    public double resistanceN(double speedMps) {
        return aero.dragN(speedMps) + rollingShare * body.massKg() * Gravity.STANDARD_MPS2;
    }

    /** Returns the force with which the engine brakes at the driven wheels with the throttle closed, N. */
    public double engineBrakingN(double speedMps) {
        return engineBrakingNm * powertrain.leverage(powertrain.lowestGear(speedMps));
    }

    /** Returns the downforce at the front axle with the body at rest there, N. */
    public double liftFrontN(double speedMps, double riseFrontM, double riseRearM) {
        return aero.frontN(speedMps, raisedFrontM + riseFrontM, raisedRearM + riseRearM);
    }

    /** Returns the downforce at the rear axle, N. */
    public double liftRearN(double speedMps, double riseFrontM, double riseRearM) {
        return aero.rearN(speedMps, raisedFrontM + riseFrontM, raisedRearM + riseRearM);
    }

    /**
     * Returns the force that the differential hands from the outer to the inner wheel of a driven axle, N; negative when the
     * inner wheel would lead.
     *
     * @param tyre       of the axle
     * @param innerPeak  greatest longitudinal force of the inner wheel, N
     * @param outerPeak  of the outer wheel, N
     * @param sideways   share of the axle's lateral peak in use
     * @param engine     drive force of the axle, N; negative on the overrun
     * @param lead       share by which the outer wheel's path is longer than the inner one's, over the mean
     */
    double handedN(MountedTyre tyre, double innerPeak, double outerPeak, double sideways, double engine, double lead) {
        double radius = powertrain.tyreRadiusM();
        double used = Math.min(sideways, MOST_SIDEWAYS);
        double left = Math.sqrt(1.0 - used * used);
        double half = 0.5 * Math.abs(engine);
        double innerSlip = tyre.ratioAt(half / Math.max(innerPeak * left, 1.0));
        double outerSlip = tyre.ratioAt(half / Math.max(outerPeak * left, 1.0));
        double more = engine >= 0.0 ? innerSlip - outerSlip : outerSlip - innerSlip;
        double stiffness =
                2.0 * innerPeak * outerPeak / Math.max(innerPeak + outerPeak, 1.0) * left * tyre.alongStiffnessShare();
        return differential.handedN(lead - more, stiffness, engine * radius, radius);
    }
}
