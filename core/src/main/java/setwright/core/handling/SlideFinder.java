package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/*
 * Design note. The level of the balance angle says little by itself: cars differ. A slide is a movement: the rear axle
 * steps out and is caught, so that front minus rear dips and comes back while the car still corners hard; or the front
 * washes out, so that the angle humps while the path does not tighten. Both are looked for as extremes with a
 * prominence, which is blind to any constant error of steering zero, toe or compliance.
 *
 * Least size: 0.56 degrees is what a tenth of the roll stiffness moved to the other axle does to the balance at nine
 * tenths of the limit (four-wheel steady state with the published 1987 tyre set); what is smaller than one such step is
 * not worth an engineer's time. And never less than six standard deviations of the noise.
 */

/** Finds the moments when one axle lets go. */
final class SlideFinder {
    static final double LEAST_SIZE_RAD = Math.toRadians(0.56);
    private static final double NOISE_FACTOR = 6.0;
    /** Share of the grip limit that the lateral acceleration must use for a slide to mean anything. */
    private static final double LEAST_LATERAL_USE = 0.45;

    private static final double BEFORE_S = 0.5;
    /** A path that tightens by less than this share of its tightest does not follow the hands. */
    private static final double TIGHTENS = 0.02;

    private SlideFinder() {}

    static List<Slide> find(PassWindow pass, PassMarks marks, Map<Phase, PhaseSplitter.Range> phases, double noiseRad) {
        double least = Math.max(LEAST_SIZE_RAD, NOISE_FACTOR * noiseRad);
        List<Slide> slides = new ArrayList<>();
        collect(pass, marks, phases, least, Slide.Axle.REAR, slides);
        collect(pass, marks, phases, least, Slide.Axle.FRONT, slides);
        return slides;
    }

    private static void collect(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            double least,
            Slide.Axle axle,
            List<Slide> slides) {
        double side = axle == Slide.Axle.REAR ? -1.0 : 1.0;
        int first = marks.turnIn();
        int last = Math.min(marks.steerStraight(), pass.size() - 1);
        for (int k = first + 1; k < last; k++) {
            double here = side * pass.balance()[k];
            boolean peak = here > side * pass.balance()[k - 1] && here >= side * pass.balance()[k + 1];
            boolean cornering = pass.inward()[k] > LEAST_LATERAL_USE * pass.limit()[k];
            if (!peak || !cornering) {
                continue;
            }
            int before = shoulder(pass.balance(), side, k, -1, Math.max(0, first - pass.samples(BEFORE_S)));
            int behind = shoulder(pass.balance(), side, k, 1, pass.size() - 1);
            double size = here - Math.max(side * pass.balance()[before], side * pass.balance()[behind]);
            double beyond = side * (pass.balance()[k] - pass.reference()[k]);
            boolean counts =
                    size >= least && beyond >= 0.5 * least && (axle == Slide.Axle.REAR || washes(pass, before, k));
            if (counts) {
                slides.add(new Slide(
                        axle,
                        PhaseSplitter.phaseAt(phases, k),
                        pass.station()[k],
                        pass.timeS(k),
                        (behind - before) * pass.stepS(),
                        size,
                        inputs(pass, marks, before, k)));
            }
        }
    }

    /** The lowest point between the peak and the next higher one on that side. */
    private static int shoulder(double[] balance, double side, int peak, int direction, int end) {
        int lowest = peak;
        for (int k = peak; k != end + direction; k += direction) {
            if (side * balance[k] > side * balance[peak]) {
                break;
            }
            if (side * balance[k] < side * balance[lowest]) {
                lowest = k;
            }
        }
        return lowest;
    }

    private static boolean washes(PassWindow pass, int before, int peak) {
        double tightest = 0.0;
        for (int k = 0; k < pass.size(); k++) {
            tightest = Math.max(tightest, pass.curvature(k));
        }
        int from = Math.max(before, peak - pass.samples(0.3));
        return pass.curvature(peak) - pass.curvature(from) < TIGHTENS * tightest
                && pass.steer()[peak] > pass.steer()[from];
    }

    private static Slide.Inputs inputs(PassWindow pass, PassMarks marks, int onset, int peak) {
        int from = Math.max(0, onset - pass.samples(BEFORE_S));
        double steerRate = (pass.steer()[onset] - pass.steer()[from]) / Math.max((onset - from) * pass.stepS(), 1.0e-3);
        return new Slide.Inputs(
                pass.brake()[onset],
                rise(pass.brake(), from, peak, 1.0),
                rise(pass.brake(), from, peak, -1.0),
                pass.throttle()[onset],
                rise(pass.throttle(), from, peak, 1.0),
                rise(pass.throttle(), from, peak, -1.0),
                steerRate,
                (onset - marks.turnIn()) * pass.stepS());
    }

    /** Largest later-minus-earlier difference, in the given direction. */
    private static double rise(double[] values, int from, int to, double direction) {
        double lowest = direction * values[from];
        double most = 0.0;
        for (int k = from; k <= to; k++) {
            lowest = Math.min(lowest, direction * values[k]);
            most = Math.max(most, direction * values[k] - lowest);
        }
        return most;
    }
}
