package setwright.core.car.model.validation.signs;

import java.util.function.UnaryOperator;
import setwright.core.car.body.Axle;
import setwright.core.car.body.Body;
import setwright.core.car.drive.Differential;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.MountedTyre;
import setwright.core.car.tyre.RaceTyre;

/** Changes that no item of a sheet makes: records with one number replaced. */
final class ModelChanges {
    private ModelChanges() {}

    static CarModel front(CarModel car, UnaryOperator<Axle> change) {
        Body b = car.body();
        return body(
                car,
                new Body(
                        b.massKg(),
                        b.toFrontM(),
                        b.toRearM(),
                        b.heightM(),
                        change.apply(b.front()),
                        b.rear(),
                        b.rollInertiaKgM2(),
                        b.pitchInertiaKgM2()));
    }

    static CarModel rear(CarModel car, UnaryOperator<Axle> change) {
        Body b = car.body();
        return body(
                car,
                new Body(
                        b.massKg(),
                        b.toFrontM(),
                        b.toRearM(),
                        b.heightM(),
                        b.front(),
                        change.apply(b.rear()),
                        b.rollInertiaKgM2(),
                        b.pitchInertiaKgM2()));
    }

    static UnaryOperator<Axle> track(double moreM) {
        return a -> {
            // the roll stiffness stays, as handbooks take it: the bar makes up for the longer lever
            double ratio = a.trackM() / (a.trackM() + moreM);
            double wanted = a.rollRate() * ratio * ratio;
            double bar = wanted * a.tyreNPerM() / (a.tyreNPerM() - wanted) - a.springNPerM();
            return axle(a, bar, a.rollCentreHeightM(), a.antiShare(), a.trackM() + moreM);
        };
    }

    static UnaryOperator<Axle> rollCentre(double moreM) {
        return a -> axle(a, a.barNPerM(), a.rollCentreHeightM() + moreM, a.antiShare(), a.trackM());
    }

    static UnaryOperator<Axle> anti(double more) {
        return a -> axle(a, a.barNPerM(), a.rollCentreHeightM(), a.antiShare() + more, a.trackM());
    }

    private static Axle axle(Axle a, double bar, double rollCentre, double anti, double track) {
        return new Axle(
                a.springNPerM(),
                bar,
                a.tyreNPerM(),
                a.damper(),
                a.bumpStopGapM(),
                a.bumpStopNPerM(),
                rollCentre,
                anti,
                track,
                a.unsprungMassKg(),
                a.unsprungHeightM());
    }

    static CarModel body(CarModel c, Body body) {
        return copy(c, body, c.differential(), c.engineBrakingNm(), c.front());
    }

    static CarModel engineBraking(CarModel c, double factor) {
        return copy(c, c.body(), c.differential(), factor * c.engineBrakingNm(), c.front());
    }

    /** A differential with nothing but preload, N m: none is free, one without end a spool. */
    static CarModel differential(CarModel c, double preloadNm) {
        return copy(c, c.body(), new Differential(preloadNm, 0.0, 0.0), c.engineBrakingNm(), c.front());
    }

    static CarModel frontTyre(CarModel c, double frictionFactor, double peakSlipFactor) {
        RaceTyre t = c.front().tyre();
        RaceTyre changed = new RaceTyre(
                t.nominalLoadN(),
                frictionFactor * t.lateralFriction(),
                frictionFactor * t.longitudinalFriction(),
                t.loadSensitivity(),
                peakSlipFactor * t.peakSlipAngle(),
                t.peakSlipAngleExponent(),
                t.peakSlipRatio(),
                t.lateralShape(),
                t.longitudinalShape(),
                t.camber(),
                t.pressure());
        return copy(
                c,
                c.body(),
                c.differential(),
                c.engineBrakingNm(),
                new MountedTyre(changed, c.front().inclination(), c.front().pressure()));
    }

    private static CarModel copy(
            CarModel c, Body body, Differential differential, double engineBraking, MountedTyre front) {
        return new CarModel(
                body,
                c.aero(),
                c.raisedFrontM(),
                c.raisedRearM(),
                c.powertrain(),
                differential,
                c.brakes(),
                c.drivenAxle(),
                c.driveFront(),
                engineBraking,
                front,
                c.rear(),
                c.toeFrontRad(),
                c.toeRearRad(),
                c.yawInertiaKgM2(),
                c.rollingShare());
    }
}
