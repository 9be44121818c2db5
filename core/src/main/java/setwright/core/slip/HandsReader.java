package setwright.core.slip;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.recording.Channel;

/** Says which axle each gesture of the hands answers. */
final class HandsReader {
    // That the axle be nearer to its peak than the other one was tried too: it lost half of the true corrections and no
    // false one.

    /** From a slide to the hands: reaction time of 0.1 to 0.2 s and the arms (human operator models, value from memory). */
    private static final double REACTION_S = 0.3;

    private HandsReader() {}

    static List<HandsReading> read(Stint stint, List<CornerPass> passes, AxleTrace axles) {
        List<HandsReading> readings = new ArrayList<>();
        double step = stint.recording().stepS();
        for (CornerPass pass : passes) {
            for (HandsEvent event : pass.hands()) {
                int from = Math.max(0, (int) Math.round((event.timeS() - REACTION_S) / step));
                int to = (int) Math.round((event.timeS() + event.durationS()) / step);
                double front = most(axles.frontUse(), from, to);
                double rear = most(axles.rearUse(), from, to);
                readings.add(new HandsReading(
                        pass.lap(), pass.corner(), event, cause(event.kind(), front, rear), front, rear));
            }
        }
        return readings;
    }

    static HandsReading.Cause cause(HandsEvent.Kind kind, double front, double rear) {
        if (!Double.isFinite(front) || !Double.isFinite(rear)) {
            return HandsReading.Cause.UNKNOWN;
        }
        return switch (kind) {
            case HOLD, CORRECTION -> rear >= GripCurves.LIMIT_USE ? HandsReading.Cause.REAR : HandsReading.Cause.DRIVER;
            case WIND_ON -> front >= GripCurves.LIMIT_USE ? HandsReading.Cause.FRONT : HandsReading.Cause.DRIVER;
            case SAWING -> HandsReading.Cause.DRIVER;
        };
    }

    private static double most(Channel use, int from, int to) {
        double most = Double.NaN;
        for (int i = from; i <= Math.min(to, use.size() - 1); i++) {
            double here = use.get(i);
            most = Double.isNaN(most) || here > most ? here : most;
        }
        return most;
    }
}
