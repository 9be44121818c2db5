package setwright.core.simulation.truth;

import setwright.core.circuit.Corner;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/*
 * Design note. The judgement finds events on filtered, noisy channels; here they are read off the true pedals and wheels by a
 * procedure of its own, so that an error there does not become the truth.
 */

/**
 * What the driver did in one pass through a corner, as distances along the line within the lap, m; NaN when it did not happen.
 *
 * @param brakeOn   beginning of the braking that leads into the corner
 * @param turnIn    the wheel begins to turn into the corner; always there
 * @param brakeOff  end of the braking
 * @param pickUp    the throttle begins to open for good
 * @param mostLock  the wheel is turned furthest; always there
 * @param straight  the wheel is straight again; always there
 */
record PassEvents(double brakeOn, double turnIn, double brakeOff, double pickUp, double mostLock, double straight) {
    private static final double PRESSED = 0.04;
    /** Share of the most lock that counts as turned. */
    private static final double TURNED = 0.12;

    private static final double OPENED = 0.1;
    private static final double SAME_BRAKING_S = 0.6;
    private static final double STAYS_OPEN_S = 0.2;

    /**
     * Reads a pass.
     *
     * @param lapStartM  distance at the start of the lap, m
     */
    static PassEvents of(DriveHistory history, Distance distance, double lapStartM, Corner corner) {
        int from = distance.sampleAt(lapStartM + corner.startM());
        int to = Math.min(distance.sampleAt(lapStartM + corner.endM()), history.count() - 1);
        Reader reader = new Reader(history, from, to, corner.sign());
        int bend = distance.sampleAt(lapStartM + corner.turnInM());
        int out = Math.min(distance.sampleAt(lapStartM + corner.turnOutM()), to);
        int most = reader.mostLock(bend, out);
        int turnIn = reader.turnIn(most);
        int straight = reader.straight(most);
        int slowest = reader.slowest(turnIn, straight);
        int off = reader.brakeOff(Math.min(slowest + reader.samples(SAME_BRAKING_S), straight));
        int on = off < 0 ? -1 : reader.brakeOn(off);
        int pickUp = reader.pickUp(off < 0 ? turnIn : off, straight);
        Place place = sample -> sample < 0 ? Double.NaN : distance.at(sample) - lapStartM;
        return new PassEvents(
                place.of(on), place.of(turnIn), place.of(off), place.of(pickUp), place.of(most), place.of(straight));
    }

    private interface Place {
        double of(int sample);
    }

    private record Reader(DriveHistory history, int from, int to, double side) {
        int samples(double seconds) {
            return (int) Math.round(seconds / history.stepS());
        }

        private double lock(int k) {
            return side * history.at(Signal.STEER, k);
        }

        int mostLock(int first, int last) {
            int most = first;
            for (int k = first; k <= last; k++) {
                most = lock(k) > lock(most) ? k : most;
            }
            return most;
        }

        int turnIn(int most) {
            int k = most;
            while (k > from && lock(k) > TURNED * lock(most)) {
                k--;
            }
            return k;
        }

        int straight(int most) {
            int k = most;
            while (k < to && lock(k) > TURNED * lock(most)) {
                k++;
            }
            return k;
        }

        int slowest(int first, int last) {
            int best = first;
            for (int k = first; k <= last; k++) {
                best = history.at(Signal.FORWARD_SPEED, k) < history.at(Signal.FORWARD_SPEED, best) ? k : best;
            }
            return best;
        }

        /** Last pressed sample up to a limit; -1 without. */
        int brakeOff(int limit) {
            int k = Math.min(limit, to);
            while (k >= from && history.at(Signal.BRAKE, k) <= PRESSED) {
                k--;
            }
            return k < from ? -1 : k;
        }

        int brakeOn(int off) {
            int on = off;
            for (int k = off; k >= from && on - k <= samples(SAME_BRAKING_S); k--) {
                on = history.at(Signal.BRAKE, k) > PRESSED ? k : on;
            }
            return on;
        }

        /** From the least throttle after a sample on; -1 when it never opens, or was never closed. */
        int pickUp(int after, int last) {
            int closed = after;
            for (int k = after; k <= last; k++) {
                closed = history.at(Signal.THROTTLE, k) <= history.at(Signal.THROTTLE, closed) + 1.0e-3 ? k : closed;
            }
            double least = history.at(Signal.THROTTLE, closed);
            int stays = samples(STAYS_OPEN_S);
            for (int k = closed; k + stays <= to && least < 0.8; k++) {
                double now = history.at(Signal.THROTTLE, k);
                if (now > least + OPENED && history.at(Signal.THROTTLE, k + stays) >= now - 0.02) {
                    return k;
                }
            }
            return -1;
        }
    }
}
