package setwright.core.proposal;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** Invented candidates. */
final class Promising {
    private Promising() {}

    /** Returns a turn of an item of a sheet that is worth so much. */
    static Candidate of(CarSheet sheet, String name, long steps, double worthS) {
        return of(sheet, name, steps, worthS, 1.0);
    }

    /** Returns one that moves the balance by a share of what the others do. */
    static Candidate of(CarSheet sheet, String name, long steps, double worthS, double share) {
        SetupItem item = sheet.item(name).orElseThrow();
        return of(new Turn(item, item.value() + steps * item.step(), steps), worthS, share);
    }

    private static Candidate of(Turn turn, double worthS, double share) {
        Effect time = new Effect(-worthS, -worthS - 0.1, -worthS + 0.1, 0.05);
        Effect balance = new Effect(-0.004, -0.007, -0.002, 0.04).times(share);
        Channel none = Channel.of(new double[] {0.0});
        Prediction prediction = new Prediction(
                List.of(turn.change()),
                List.of(),
                List.of(new PhaseEffect(Phase.MID, Optional.empty(), balance)),
                time,
                List.of(1.0),
                new LapEffect(none, none, none, none, none, none),
                List.of("because"),
                List.of());
        return new Candidate(turn, prediction, balance, 0.96, List.of(), worthS, List.of());
    }
}
