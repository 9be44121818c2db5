package setwright.core.limit;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.body.Body;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;

/** Whole cars for laps. */
public final class LapCars {
    private LapCars() {}

    /** Returns a rear-driven car with strong downforce, in the setup of {@link Sheets#adjustable()} but for changes. */
    public static CarModel winged(SetupChange... changes) {
        CarSheet sheet = Sheets.adjustable();
        return new CarAssembler(sheet)
                .build(sheet.with(List.of(changes)), CarPrior.of(sheet).middle());
    }

    /** Returns a car without wings or setup items. */
    public static CarModel plain(DrivenAxle driven) {
        CarSheet sheet = Sheets.plain(driven, 1150.0, driven == DrivenAxle.FRONT ? 0.6 : 0.49, 2.6, 13.0, 0.48);
        return new CarAssembler(sheet).build(CarPrior.of(sheet).middle());
    }

    /** Returns a car with its centre of gravity elsewhere: higher, and closer to the front axle, m. */
    public static CarModel moved(CarModel car, double higher, double forward) {
        Body body = car.body();
        return car.with(new Body(
                body.massKg(),
                body.toFrontM() - forward,
                body.toRearM() + forward,
                body.heightM() + higher,
                body.front(),
                body.rear(),
                body.rollInertiaKgM2(),
                body.pitchInertiaKgM2()));
    }
}
