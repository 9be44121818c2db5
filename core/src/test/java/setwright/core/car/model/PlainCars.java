package setwright.core.car.model;

import setwright.core.car.DrivenAxle;
import setwright.core.car.aero.AeroMap;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.body.Damper;
import setwright.core.car.drive.Brakes;
import setwright.core.car.drive.Differential;
import setwright.core.car.drive.Powertrain;
import setwright.core.car.tyre.CamberEffect;
import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.PressureEffect;
import setwright.core.car.tyre.RaceTyre;

/** Cars built number by number, for checks against formulas; every unused part of the car is left out. */
public final class PlainCars {
    /** So stiff that body movement does not enter. */
    public static final double RIGID = 1.0e8;

    public static final double TRACK = 1.5;

    private PlainCars() {}

    /** Returns an axle on rigid tyres, roll centre on the ground, without unsprung parts, bump stops and anti effects. */
    public static Axle axle(double springNPerM, double barNPerM, double damperNsPerM) {
        return axle(springNPerM, barNPerM, damper(damperNsPerM), 0.0, 0.0, TRACK);
    }

    public static Axle axle(
            double springNPerM, double barNPerM, Damper damper, double rollCentreM, double antiShare, double trackM) {
        return new Axle(springNPerM, barNPerM, 1.0e13, damper, 1.0e3, 0.0, rollCentreM, antiShare, trackM, 0.0, 0.0);
    }

    /** Returns a damper with one slope for everything. */
    public static Damper damper(double slope) {
        return new Damper(slope, slope, slope, slope, 1.0);
    }

    /** Returns a tyre whose cornering stiffness does not depend on load, N/rad per wheel. */
    public static MountedTyre linear(double nominalN, double stiffnessNPerRad) {
        double peakSlip = 0.3;
        double friction = stiffnessNPerRad * peakSlip / (MountedTyre.SHAPE.initialSlope() * nominalN);
        return new MountedTyre(
                new RaceTyre(
                        nominalN,
                        friction,
                        friction,
                        0.0,
                        peakSlip,
                        1.0,
                        0.1,
                        MountedTyre.SHAPE,
                        CurveShape.of(1.5),
                        CamberEffect.NONE,
                        PressureEffect.NONE),
                0.0,
                1.0);
    }

    /** Returns a car in a vacuum with free differential, no engine braking and no rolling resistance. */
    public static CarModel car(
            Body body, MountedTyre front, MountedTyre rear, double driveFront, double brakeFront, double yawInertia) {
        return car(body, front, rear, driveFront, brakeFront, yawInertia, 0.0, 0.0, 0.0);
    }

    public static CarModel car(
            Body body,
            MountedTyre front,
            MountedTyre rear,
            double driveFront,
            double brakeFront,
            double yawInertia,
            double liftFrontM2,
            double liftRearM2,
            double density) {
        return car(
                body,
                front,
                rear,
                driveFront,
                brakeFront,
                yawInertia,
                new AeroMap(liftFrontM2, liftRearM2, 0.0, 0.1, 0.1, 0.0, 0.0, 0.0, density),
                new Differential(0.0, 0.0, 0.0));
    }

    public static CarModel car(
            Body body,
            MountedTyre front,
            MountedTyre rear,
            double driveFront,
            double brakeFront,
            double yawInertia,
            AeroMap aero,
            Differential differential) {
        return new CarModel(
                body,
                aero,
                0.0,
                0.0,
                new Powertrain(
                        new double[] {10.0, 1000.0},
                        new double[] {1.0e5, 1.0e5},
                        new double[] {1.0},
                        1.0,
                        0.3,
                        1.0e5,
                        1.0e5,
                        1.0),
                differential,
                new Brakes(brakeFront),
                driveFront == 1.0 ? DrivenAxle.FRONT : driveFront == 0.0 ? DrivenAxle.REAR : DrivenAxle.ALL,
                driveFront,
                0.0,
                front,
                rear,
                0.0,
                0.0,
                yawInertia,
                0.0);
    }
}
