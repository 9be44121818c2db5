package setwright.core.handling;

/*
 * Design note. Events are read off each pass alone, by shares of that pass's own extremes, so that neither the unit of a
 * pedal nor the size of a corner matters. The order in which things are looked for: the hands first (most lock, then
 * back to turn-in and on to straight), then the slowest point, then the brake zone that leads up to it, then the throttle
 * behind it. A flat-out kink has only hands.
 */

/** Finds where the driver did what. */
final class MarkFinder {
    /** Share of a pass's most lock that counts as turned in: far above steering noise, far below what a corner needs. */
    private static final double TURNED = 0.12;

    private static final double WELL_TURNED = 0.35;
    private static final double FULL = 0.95;
    private static final double PICKED_UP = 0.10;
    /** Two squeezes of the brake closer than this are one braking. */
    private static final double SAME_BRAKING_S = 0.6;

    private static final double PICK_UP_HOLD_S = 0.15;

    private MarkFinder() {}

    static PassMarks find(PassWindow pass) {
        int about = pass.indexAt(pass.corner().turnInM());
        int out = Math.max(about + 1, pass.indexAt(pass.corner().turnOutM()));
        int highest = pass.indexOfMost(pass.steer(), about, Math.min(out + 1, pass.size()));
        double most = pass.steer()[highest];
        int turnIn = backTo(pass.steer(), highest, most);
        int straight = onTo(pass.steer(), highest, most);
        int slowest = slowest(pass, turnIn, Math.min(straight, pass.size() - 1));
        int[] braking = braking(pass, slowest, straight);
        int pickUp = pickUp(pass, braking[1] >= 0 ? braking[1] : turnIn, slowest);
        int brakePeak = braking[0] < 0 ? -1 : pass.indexOfMost(pass.brake(), braking[0], braking[1] + 1);
        int full = pickUp < 0 ? -1 : firstAbove(pass.throttle(), pickUp, FULL);
        return new PassMarks(braking[0], brakePeak, turnIn, braking[1], highest, slowest, pickUp, full, straight);
    }

    private static int backTo(double[] steer, int from, double most) {
        int k = from;
        while (k > 0 && steer[k] > WELL_TURNED * most) {
            k--;
        }
        while (k > 0 && steer[k] > TURNED * most) {
            k--;
        }
        return k;
    }

    private static int onTo(double[] steer, int from, double most) {
        int last = from;
        for (int k = from; k < steer.length && steer[k] > TURNED * most; k++) {
            last = k;
        }
        return last;
    }

    private static int slowest(PassWindow pass, int from, int to) {
        int best = from;
        for (int k = from; k <= to; k++) {
            if (pass.speed()[k] < pass.speed()[best]) {
                best = k;
            }
        }
        return best;
    }

    /** First and last pressed sample of the braking that ends nearest to the slowest point; {-1, -1} without. */
    private static int[] braking(PassWindow pass, int slowest, int straight) {
        int bridge = pass.samples(SAME_BRAKING_S);
        int limit = Math.min(Math.min(slowest + bridge, straight), pass.size() - 1);
        int off = limit;
        while (off >= 0 && pass.brake()[off] <= Pedals.PRESSED) {
            off--;
        }
        if (off < 0) {
            return new int[] {-1, -1};
        }
        int on = off;
        for (int k = off; k >= 0 && on - k <= bridge; k--) {
            if (pass.brake()[k] > Pedals.PRESSED) {
                on = k;
            }
        }
        return new int[] {on, off};
    }

    private static int pickUp(PassWindow pass, int after, int slowest) {
        double[] throttle = pass.throttle();
        int last = Math.min(pass.size() - 1, Math.max(after, slowest) + pass.samples(1.0));
        double least = Double.POSITIVE_INFINITY;
        for (int k = after; k <= last; k++) {
            least = Math.min(least, throttle[k]);
        }
        // held against the least of all, not the one before: a foot that opens slowly would never seem to leave it
        int closed = after;
        for (int k = after; k <= last; k++) {
            closed = throttle[k] <= least + 0.02 ? k : closed;
        }
        if (throttle[closed] > FULL - PICKED_UP) {
            return -1;
        }
        int hold = pass.samples(PICK_UP_HOLD_S);
        for (int k = closed; k < pass.size() - hold; k++) {
            boolean up = throttle[k] > throttle[closed] + PICKED_UP && throttle[k + hold] >= throttle[k] - 0.02;
            if (up) {
                return k;
            }
        }
        return -1;
    }

    private static int firstAbove(double[] values, int from, double level) {
        for (int k = from; k < values.length; k++) {
            if (values[k] >= level) {
                return k;
            }
        }
        return -1;
    }
}
