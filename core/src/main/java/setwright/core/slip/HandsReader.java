package setwright.core.slip;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** Says which axle each gesture of the hands answers. */
final class HandsReader {
    // That the axle be nearer to its peak than the other one was tried too: it lost half of the true corrections and no
    // false one.

    /** From a slide to the hands: reaction time of 0.1 to 0.2 s and the arms (human operator models, value from memory). */
    private static final double REACTION_S = 0.3;

    /**
     * Use of the front from which on lock is wound on in vain: at its limit even where the slip at the peak is as much greater than
     * believed as the interval of 95 % that is shown for it allows. A correction is seen for itself; this is one by the front alone.
     */
    static final double SURE_LIMIT = GripCurves.LIMIT_USE * (1.0 + GripCurves.NORMAL_95 * GripCurves.PEAK_SLIP_DOUBT);

    private HandsReader() {}

    static List<HandsReading> read(Stint stint, List<CornerPass> passes, AxleTrace axles) {
        List<HandsReading> readings = new ArrayList<>();
        double step = stint.recording().stepS();
        for (CornerPass pass : passes) {
            for (HandsEvent event : pass.hands()) {
                int from = Math.max(0, (int) Math.round((event.timeS() - REACTION_S) / step));
                int to = (int) Math.round((event.timeS() + event.durationS()) / step);
                int begin = (int) Math.round(event.timeS() / step);
                // lock that is wound back on after a slide comes to its limit at the end only: the front must be there
                // all along
                double front = event.kind() == HandsEvent.Kind.WIND_ON
                        ? median(axles.frontUse(), begin, to)
                        : most(axles.frontUse(), from, to);
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
            case WIND_ON -> front >= SURE_LIMIT ? HandsReading.Cause.FRONT : HandsReading.Cause.DRIVER;
            case SAWING -> HandsReading.Cause.DRIVER;
        };
    }

    private static double median(Channel use, int from, int to) {
        return Robust.median(Robust.finite(use.slice(from, Math.min(to + 1, use.size()))));
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
