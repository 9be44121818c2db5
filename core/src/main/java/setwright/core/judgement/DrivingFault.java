package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import setwright.core.handling.Phase;

/**
 * A habit of the driver that costs time or hides what the car does.
 *
 * @param kind      what, in plain words, such as {@code throttle picked up, then lifted}
 * @param corners   corner numbers where it happens in most passes, ascending; for gear changes the corners that they follow
 * @param lapShare  share of the judged passes through these corners, 0..1
 * @param size      how large, in {@code unit}
 * @param unit      unit of {@code size} as shown
 * @param proofs    the laps that show it, one entry per corner
 * @param cost      what it costs a lap, where the laps show it
 * @param habit     whether it is how he drives all round the lap, rather than in a corner or two
 */
public record DrivingFault(
        String kind,
        List<Integer> corners,
        double lapShare,
        double size,
        String unit,
        List<Proof> proofs,
        Optional<LostTime> cost,
        boolean habit) {
    public DrivingFault {
        corners = List.copyOf(corners);
        proofs = List.copyOf(proofs);
    }

    /** Tells whether it is the brake that is on for too long or too hard while the car turns. */
    public boolean byTheBrake() {
        return HabitRule.OF_THE_BRAKE.contains(kind);
    }

    /** Tells whether it is the throttle that comes too early or too much while the car turns. */
    public boolean byTheThrottle() {
        return HabitRule.OF_THE_THROTTLE.contains(kind);
    }

    /** Tells whether the throttle is opened and then closed again. */
    public boolean byTheLift() {
        return HabitRule.OF_THE_LIFT.contains(kind);
    }

    /** Tells whether it is more than the driver asked for in the baseline. */
    public boolean sinceTheBaseline() {
        return HabitRule.SINCE_THE_BASELINE.contains(kind);
    }

    /** Tells whether it may have made the balance of a phase: a brake that is on for longer changes all that follows, a throttle what comes after. */
    public boolean reaches(Phase phase) {
        return byTheBrake() || phase == Phase.MID || phase == Phase.EXIT;
    }

    /** Tells whether it is too much speed at turn-in. */
    public boolean byTheSpeed() {
        return kind.equals(OverdrivenEntry.KIND);
    }

    /** One without proofs, cost or the claim that it is a habit. */
    public DrivingFault(String kind, List<Integer> corners, double lapShare, double size, String unit) {
        this(kind, corners, lapShare, size, unit, List.of(), Optional.empty(), false);
    }

    /**
     * The laps that show it at one corner.
     *
     * @param corner    number
     * @param laps      lap numbers, ascending
     * @param worstLap  the lap that shows it most
     * @param worst     its size there, in the fault's unit
     */
    public record Proof(int corner, List<Integer> laps, int worstLap, double worst) {
        public Proof {
            laps = List.copyOf(laps);
        }
    }
}
