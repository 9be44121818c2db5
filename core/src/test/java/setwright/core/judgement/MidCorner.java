package setwright.core.judgement;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.PassShapes;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.SpeedClass;
import setwright.core.recording.Channel;

/** Invented passes whose balance in the middle of the corner is known. */
final class MidCorner {
    /** The tyres are hardly worked, so that a healthy car shows nothing. */
    private static final double USE = 0.1;

    private MidCorner() {}

    /** Returns one with a second in the middle of the corner and nothing else in it. */
    static CornerPass pass(int lap, int corner, double speed, double excessRad) {
        OptionalDouble none = OptionalDouble.empty();
        Channel flat = Channel.of(new double[PassShapes.POINTS]);
        return new CornerPass(
                lap,
                corner,
                SpeedClass.of(speed),
                new CornerEvents(none, none, none, none, none, none, none, none, none),
                0.0,
                Map.of(
                        Phase.MID,
                        new PhaseBalance(Phase.MID, 0.0, 30.0, 1.0, excessRad, 0.0, 0.0, USE, USE, 12.0, speed)),
                List.of(),
                List.of(),
                new Habits(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.1, 0.4, 0.8, 0.0, Double.NaN, 0.0, 1.5, 1.2),
                new PassShapes(flat, flat, flat, flat),
                speed,
                speed,
                speed,
                3.0,
                0.0);
    }
}
