package setwright.app.json;

import static setwright.app.json.Numbers.known;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;
import setwright.core.technique.TechniqueLever.Effect;
import setwright.core.technique.TechniqueLever.Response;

/** The levers of technique as JSON. */
final class TechniqueJsonWriter {
    private TechniqueJsonWriter() {}

    static List<TechniqueJson> of(Diagnosis diagnosis, CarSheet car) {
        return TechniqueFinder.find(diagnosis, car.drivenAxle()).stream()
                .map(TechniqueJsonWriter::lever)
                .toList();
    }

    private static TechniqueJson lever(TechniqueLever lever) {
        return new TechniqueJson(
                lever.rank(),
                lever.lever().words(),
                known(lever.move()),
                lever.lever().unit(),
                lever.laps(),
                known(lever.strength()),
                lever.weak(),
                lever.fault().map(DrivingFault::kind),
                lever.varies(),
                known(lever.adjusted()),
                lever.effect().map(effect -> effect(lever.response(), effect)),
                lever.firstStep()
                        .map(step -> new TechniqueJson.Step(
                                step.of().words(), step.of().unit(), known(step.usual()), known(step.aim()))),
                lever.against(),
                lever.corners().stream()
                        .map(at -> new TechniqueJson.Corner(
                                at.corner(),
                                known(at.usual()),
                                known(at.better()),
                                at.effect().map(effect -> effect(lever.response(), effect))))
                        .toList());
    }

    private static TechniqueJson.Effect effect(Response response, Effect effect) {
        return switch (response) {
            case BALANCE -> scaled("balance", "deg", Math.toDegrees(1.0), effect);
            case SLIDE -> scaled("slides of the rear", "deg", Math.toDegrees(1.0), effect);
            case LIFT -> scaled("throttle closed again", "share of throttle", 1.0, effect);
            case TIME -> scaled("time through the corner", "s", 1.0, effect);
        };
    }

    private static TechniqueJson.Effect scaled(String of, String unit, double scale, Effect effect) {
        return new TechniqueJson.Effect(
                of, unit, known(scale * effect.change()), known(scale * effect.low()), known(scale * effect.high()));
    }
}
