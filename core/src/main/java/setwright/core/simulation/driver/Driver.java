package setwright.core.simulation.driver;

import java.util.List;
import java.util.Random;
import setwright.core.car.model.CarModel;
import setwright.core.simulation.vehicle.Inputs;
import setwright.core.simulation.vehicle.TransientCar;

/** A driver at work: one step after the other; mutable. */
final class Driver {
    private final Hands hands;
    private final Feet feet;
    private final SlideReaction slides;

    Driver(CarModel car, CarFeel feel, DriverStyle style, double greatestBrakeN, double stepS, Random random) {
        this.hands = new Hands(car, feel, style, stepS, random);
        this.feet = new Feet(car, feel, style, greatestBrakeN);
        this.slides = new SlideReaction(feel, style, stepS);
    }

    /** Returns what he does in the next step. */
    Inputs act(double stepS, double timeS, TransientCar car, LinePath path, LapIntent intent, int lap) {
        slides.step(timeS, car, lap, path.stationM());
        hands.step(stepS, car, path, slides.holds(), slides.catching(), slides.lockFactor());
        double ahead = path.stationM() + car.speedMps() * feet.leadS();
        feet.step(
                stepS,
                car,
                intent.speedAt(ahead),
                intent.accelerationAt(ahead),
                slides.throttleKept(),
                slides.brakeKept());
        return new Inputs(hands.steerRad(), feet.throttle(), feet.brake());
    }

    List<DriverEvent> events() {
        return slides.events();
    }
}
