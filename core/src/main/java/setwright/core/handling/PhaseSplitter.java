package setwright.core.handling;

import java.util.EnumMap;
import java.util.Map;

/** Cuts a pass into the phases between the driver's events. */
final class PhaseSplitter {
    /** Without a brake, the entry lasts until the wheel is nearly at its most, and the mid until it leaves there. */
    private static final double NEARLY_MOST = 0.9;

    /** One sample of a slow logger: a filter of 4 Hz stands behind each, so that short phases are known as well as long ones. */
    private static final double LEAST_S = 0.02;

    private PhaseSplitter() {}

    /** First sample (inclusive) and last (exclusive) of a phase. */
    record Range(int from, int to) {}

    static Map<Phase, Range> split(PassWindow pass, PassMarks marks) {
        int turnIn = marks.turnIn();
        int straight = Math.min(marks.steerStraight() + 1, pass.size());
        int entryEnd = entryEnd(pass, marks);
        int midEnd = Math.max(entryEnd, Math.min(midEnd(pass, marks), straight));
        Map<Phase, Range> phases = new EnumMap<>(Phase.class);
        if (marks.brakeOn() >= 0) {
            put(pass, phases, Phase.BRAKING, marks.brakeOn(), turnIn);
        }
        put(pass, phases, Phase.ENTRY, turnIn, entryEnd);
        put(pass, phases, Phase.MID, entryEnd, midEnd);
        put(pass, phases, Phase.EXIT, midEnd, straight);
        return phases;
    }

    static Phase phaseAt(Map<Phase, Range> phases, int sample) {
        Phase last = Phase.BRAKING;
        for (Phase phase : Phase.values()) {
            Range range = phases.get(phase);
            if (range != null && sample >= range.from()) {
                last = phase;
            }
        }
        return last;
    }

    private static int entryEnd(PassWindow pass, PassMarks marks) {
        int steered = marks.turnIn();
        while (steered < marks.highestSteer()
                && pass.steer()[steered] < NEARLY_MOST * pass.steer()[marks.highestSteer()]) {
            steered++;
        }
        // the last sample with the brake pressed is still entry
        int end = marks.brakeOff() > marks.turnIn() ? marks.brakeOff() + 1 : steered;
        return marks.throttlePickUp() > marks.turnIn() ? Math.min(end, marks.throttlePickUp()) : end;
    }

    private static int midEnd(PassWindow pass, PassMarks marks) {
        if (marks.throttlePickUp() > marks.turnIn()) {
            return marks.throttlePickUp();
        }
        int last = marks.highestSteer();
        for (int k = last; k < pass.size(); k++) {
            if (pass.steer()[k] >= NEARLY_MOST * pass.steer()[marks.highestSteer()]) {
                last = k;
            }
        }
        return last;
    }

    private static void put(PassWindow pass, Map<Phase, Range> phases, Phase phase, int from, int to) {
        if (to - from >= pass.samples(LEAST_S)) {
            phases.put(phase, new Range(from, to));
        }
    }
}
