package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Lines;
import setwright.core.circuit.ReferenceLine;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

final class LimitLapTest {
    private static final CarSheet SHEET = Sheets.adjustable();
    private static final CarBelief CAR = CarBelief.of(CarPrior.of(SHEET));
    private static final ReferenceLine LINE = Lines.loop();

    private static SetupChange to(String name, double value) {
        return new SetupChange(name, item(name).value(), value);
    }

    private static SetupItem item(String name) {
        return SHEET.item(name).orElseThrow();
    }

    private static Candidate promising(String name, double to, List<Refusal> refused) {
        SetupItem item = item(name);
        Effect quicker = new Effect(-0.2, -0.3, -0.1, 0.01);
        Channel none = Channel.of(new double[] {0.0});
        Prediction prediction = new Prediction(
                List.of(to(name, to)),
                List.of(),
                List.of(new PhaseEffect(Phase.MID, Optional.empty(), quicker)),
                quicker,
                List.of(1.0),
                new LapEffect(none, none, none, none, none, none),
                List.of("because"),
                List.of());
        Turn turn = new Turn(item, to, Math.round((to - item.value()) / item.step()));
        return new Candidate(turn, prediction, quicker, 0.9, List.of(), 0.2, refused);
    }

    /** Within the same tyres the best pressure is the middle of its range; dampers work between two steady states. */
    @Test
    void tyresAwayFromTheirBestPressureCostTimeAndDampersNone() {
        LimitLap lap = LimitLap.of(SHEET, CAR, LINE).orElseThrow();
        SetupItem pressure = item("front_tyre_pressure");
        assertThat(lap.slowerS(to("front_tyre_pressure", pressure.max())).orElseThrow())
                .isGreaterThan(0.02);
        assertThat(lap.slowerS(to("front_bump", item("front_bump").max())).orElseThrow())
                .isBetween(-0.005, 0.005);
    }

    @Test
    void whatSlowsTheCarAtItsLimitIsRefusedWhateverItPromises() {
        Candidate over =
                promising("front_tyre_pressure", item("front_tyre_pressure").max(), List.of());
        Candidate damper = promising("front_bump", item("front_bump").max(), List.of());
        Candidate refused = promising(
                "front_tyre_pressure",
                item("front_tyre_pressure").min(),
                List.of(Refusal.of(Refusal.Kind.GROUND, "no")));
        List<Candidate> judged = LimitLap.judge(List.of(over, damper, refused), SHEET, CAR, LINE);
        assertThat(judged.get(0).objections())
                .singleElement()
                .asString()
                .startsWith("at its limit the car would lose 0.")
                .endsWith("a lap: it costs grip or top speed");
        assertThat(judged.get(1)).isSameAs(damper);
        assertThat(judged.get(2)).isSameAs(refused);
    }
}
