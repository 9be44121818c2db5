package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds what the hands did that the corner alone does not explain: holds, corrections, winding on. */
final class HandsFinder {
    /** Share of a pass's most lock below which a movement is no gesture. */
    static final double LEAST_SHARE = 0.08;
    /** A correction goes against the corner while it still pulls by this share of its own most. */
    private static final double STILL_CORNERING = 0.4;

    private HandsFinder() {}

    static List<HandsEvent> find(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            double steeringRatio,
            double balanceNoiseRad) {
        double most = pass.steer()[marks.highestSteer()];
        List<HandsEvent> events = new ArrayList<>();
        if (most > 0.0) {
            corrections(pass, marks, phases, steeringRatio, most, events);
            events.addAll(WindOnFinder.find(pass, marks, phases, steeringRatio, balanceNoiseRad));
            events.addAll(HoldFinder.find(pass, marks, phases, steeringRatio));
        }
        events.sort((a, b) -> Double.compare(a.timeS(), b.timeS()));
        return events;
    }

    /** Reversals of the wheel per second between turn-in and straight, each larger than the least gesture. */
    static double reversalsPerSecond(PassWindow pass, PassMarks marks) {
        double gap = LEAST_SHARE * pass.steer()[marks.highestSteer()];
        int reversals = 0;
        int direction = 1;
        double extreme = pass.steer()[marks.turnIn()];
        int last = Math.min(marks.steerStraight(), pass.size() - 1);
        for (int k = marks.turnIn(); k <= last; k++) {
            double here = direction * pass.steer()[k];
            extreme = direction > 0 ? Math.max(extreme, pass.steer()[k]) : Math.min(extreme, pass.steer()[k]);
            if (direction * extreme - here > gap) {
                reversals++;
                direction = -direction;
                extreme = pass.steer()[k];
            }
        }
        return reversals / Math.max((last - marks.turnIn()) * pass.stepS(), 0.5);
    }

    private static void corrections(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            double ratio,
            double most,
            List<HandsEvent> events) {
        double strongest = strongest(pass, marks);
        int k = marks.turnIn() + 1;
        int last = Math.min(marks.steerStraight(), pass.size() - 1);
        int top = marks.turnIn();
        while (k < last) {
            if (pass.steer()[k] >= pass.steer()[top]) {
                top = k++;
                continue;
            }
            int low = k;
            int back = k;
            while (back < last && pass.steer()[back] - pass.steer()[low] < LEAST_SHARE * most) {
                low = pass.steer()[back] < pass.steer()[low] ? back : low;
                back++;
            }
            double dip = pass.steer()[top] - pass.steer()[low];
            boolean returned = pass.steer()[back] - pass.steer()[low] >= LEAST_SHARE * most;
            boolean cornering = pass.inward()[low] > STILL_CORNERING * strongest;
            boolean againstThePath = pass.balance()[top] - pass.balance()[low] > 0.5 * dip;
            if (returned && dip >= LEAST_SHARE * most && cornering && againstThePath) {
                events.add(event(pass, phases, HandsEvent.Kind.CORRECTION, top, back, dip * ratio));
            }
            top = back;
            k = back + 1;
        }
    }

    static double strongest(PassWindow pass, PassMarks marks) {
        return pass.inward()[pass.indexOfMost(pass.inward(), marks.turnIn(), marks.steerStraight() + 1)];
    }

    static HandsEvent event(
            PassWindow pass,
            Map<Phase, PhaseSplitter.Range> phases,
            HandsEvent.Kind kind,
            int from,
            int to,
            double size) {
        return new HandsEvent(
                kind,
                PhaseSplitter.phaseAt(phases, from),
                pass.station()[from],
                pass.timeS(from),
                (to - from) * pass.stepS(),
                size);
    }
}
