package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import setwright.core.car.BalancedCar;

/*
 * Design note. The level of the balance angle says little by itself: cars differ. A slide is a movement: the rear axle
 * steps out and is caught, so that front minus rear dips and comes back while the car still corners hard; or the front
 * washes out, so that the angle humps while the path does not tighten. Both are looked for as extremes with a
 * prominence, which is blind to any constant error of steering zero, toe or compliance.
 *
 * The height is taken on the angle itself, not on its excess over the reference: early in a corner that growing reference
 * would turn every late turn-in into a slide (tried: a balanced car then shows five such corners of eleven).
 *
 * Least size: 0.56 degrees is what a tenth of the roll stiffness moved to the other axle does to the balance at nine
 * tenths of the limit (four-wheel steady state with the published 1987 tyre set). Three quarters of such a step count,
 * since filtering takes about a quarter off a dip of half a second; smaller dips are everyday steering. This choice is
 * ours and awaits calibration on simulated laps. And never less than six standard deviations of the noise.
 */

/** Finds the moments when one axle lets go. */
final class SlideFinder {
    private static final double NOISE_FACTOR = 6.0;
    /** Share of the grip limit that the lateral acceleration must use for a slide to mean anything. */
    private static final double LEAST_LATERAL_USE = 0.45;

    private static final double BEFORE_S = 0.5;
    private static final double MOST_OF_IT = 0.8;

    private SlideFinder() {}

    static List<Slide> find(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            BalancedCar car,
            double noiseRad) {
        double least = Math.max(Slide.LEAST_RAD, NOISE_FACTOR * noiseRad);
        List<Slide> slides = new ArrayList<>();
        collect(pass, marks, phases, car, least, Slide.Axle.REAR, slides);
        collect(pass, marks, phases, car, least, Slide.Axle.FRONT, slides);
        return slides;
    }

    private static void collect(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            BalancedCar car,
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
            if (axle == Slide.Axle.FRONT) {
                size = Math.min(size, washed(pass, k));
            } else if (!stepsOut(pass, car, k, least)) {
                continue;
            }
            if (size >= least) {
                int onset = onset(pass.balance(), side, k, size);
                slides.add(new Slide(
                        axle,
                        PhaseSplitter.phaseAt(phases, onset),
                        pass.station()[k],
                        pass.timeS(k),
                        (behind - before) * pass.stepS(),
                        size,
                        inputs(pass, marks, onset, k)));
            }
        }
    }

    /** Where the movement began: the last sample before the peak with most of its height still to come. */
    private static int onset(double[] balance, double side, int peak, double size) {
        int k = peak;
        while (k > 0 && side * (balance[peak] - balance[k]) < MOST_OF_IT * size) {
            k--;
        }
        return k;
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

    /** The rear steps out when it slips more, against the front, than the balanced car's would in steady cornering. */
    private static boolean stepsOut(PassWindow pass, BalancedCar car, int peak, double least) {
        double steady = car.balance(pass.speed()[peak], pass.inward()[peak], 0.0, 0.0, 0.0);
        return steady - pass.balance()[peak] >= least;
    }

    /**
     * How far the front washed out before a peak: the most that its slip grew beyond the balanced car's over half a second
     * in which the path did not tighten; 0 when the path followed the hands.
     */
    private static double washed(PassWindow pass, int peak) {
        int from = Math.max(0, peak - pass.samples(BEFORE_S));
        double excess = pass.balance()[peak] - pass.reference()[peak];
        double most = 0.0;
        for (int k = from; k < peak; k++) {
            double grown = excess - (pass.balance()[k] - pass.reference()[k]);
            if (!pass.tightens(k, peak)) {
                most = Math.max(most, grown);
            }
        }
        return most;
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
