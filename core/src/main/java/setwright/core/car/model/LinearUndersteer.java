package setwright.core.car.model;

import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.figures.UndersteerModel;

/**
 * Understeer gradient of the car as its sheet describes it, with usual tyres where it does not: {@code K = (m/L)(b/C_f -
 * a/C_r)} at static loads (see {@link SingleTrack}). Compliance of the steering, which laps show as well, is not in it.
 */
public final class LinearUndersteer implements UndersteerModel {

    /** Tells the gradient of any sheet. */
    public LinearUndersteer() {}

    @Override
    public OptionalDouble gradient(CarSheet sheet) {
        return OptionalDouble.of(
                of(new CarAssembler(sheet).build(CarPrior.of(sheet).middle())));
    }

    /** Returns the gradient of a car at low lateral acceleration, rad/(m/s²). */
    public static double of(CarModel car) {
        double toFront = car.body().toFrontM();
        double toRear = car.body().toRearM();
        SingleTrack track = new SingleTrack(
                car.body().massKg(),
                car.yawInertiaKgM2(),
                toFront,
                toRear,
                2.0 * car.front().corneringStiffness(car.body().staticFrontN()),
                2.0 * car.rear().corneringStiffness(car.body().staticRearN()));
        return track.understeerGradient();
    }
}
