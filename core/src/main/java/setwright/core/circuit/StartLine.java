package setwright.core.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;

/**
 * A line across the road at right angles to the course.
 *
 * @param x       of its middle, m
 * @param y       of its middle, m
 * @param course  direction in which it is crossed, rad
 */
record StartLine(double x, double y, double course) {
    /** How far from the middle the line is still crossed: pit lanes beside the straight count, m. */
    private static final double HALF_WIDTH_M = 40.0;

    /** Returns the line on which marked crossings lie; empty where positions are missing at most of them. */
    static Optional<StartLine> through(Track track, List<Crossing> crossings) {
        List<Track.Fix> fixes = crossings.stream()
                .map(crossing -> track.fixAt(crossing.sample()))
                .flatMap(Optional::stream)
                .filter(fix -> Math.hypot(fix.dx(), fix.dy()) > 0.0)
                .toList();
        if (2 * fixes.size() <= crossings.size()) {
            return Optional.empty();
        }
        double cosine =
                fixes.stream().mapToDouble(fix -> Math.cos(fix.course())).sum();
        double sine = fixes.stream().mapToDouble(fix -> Math.sin(fix.course())).sum();
        return Optional.of(new StartLine(
                Robust.median(fixes.stream().mapToDouble(Track.Fix::x).toArray()),
                Robust.median(fixes.stream().mapToDouble(Track.Fix::y).toArray()),
                Math.atan2(sine, cosine)));
    }

    /** Distance of a place beyond the line, m. */
    double ahead(double px, double py) {
        return (px - x) * Math.cos(course) + (py - y) * Math.sin(course);
    }

    private double beside(double px, double py) {
        return -(px - x) * Math.sin(course) + (py - y) * Math.cos(course);
    }

    /**
     * Returns the moment near {@code guess} when the line was crossed, from a straight-line fit of the positions, no further
     * from the guess than {@code reach} samples.
     */
    double refine(Track track, double guess, double reach) {
        double sample = guess;
        for (int round = 0; round < 2; round++) {
            Optional<Track.Fix> fix = track.fixAt(sample);
            if (fix.isEmpty()) {
                return guess;
            }
            double perSample = fix.get().dx() * Math.cos(course) + fix.get().dy() * Math.sin(course);
            if (!(perSample > 0.0)) {
                return guess;
            }
            sample -= ahead(fix.get().x(), fix.get().y()) / perSample;
            sample = Math.max(guess - reach, Math.min(guess + reach, sample));
        }
        return sample;
    }

    /** Returns every crossing in the line's direction. */
    List<Crossing> crossings(Track track) {
        List<Crossing> found = new ArrayList<>();
        int before = -1;
        for (int i = 0; i < track.size(); i++) {
            if (!track.known(i)) {
                continue;
            }
            if (before >= 0) {
                double a = ahead(track.x(before), track.y(before));
                double b = ahead(track.x(i), track.y(i));
                boolean near = Math.abs(beside(track.x(i), track.y(i))) < HALF_WIDTH_M && b - a < 2.0 * HALF_WIDTH_M;
                // A jitter back and forth over the line within 2 s is one crossing.
                boolean again =
                        !found.isEmpty() && i - found.get(found.size() - 1).sample() < 2.0 / track.stepS();
                if (near && !again && a < 0.0 && b >= 0.0) {
                    double guess = before + (i - before) * -a / (b - a);
                    found.add(new Crossing(refine(track, guess, 0.3 / track.stepS()), Crossing.UNNUMBERED));
                }
            }
            before = i;
        }
        return found;
    }

    /**
     * Chooses a line where nobody marked one: of the places that are passed most often in the same direction, the middle of
     * the longest stretch driven nearly straight.
     */
    static Optional<StartLine> choose(Motion motion, Track track) {
        double reach = Math.max(15.0, 4.0 * track.noiseM());
        int[] places = everyMetres(motion, track, 20.0);
        int[] passes = new int[places.length];
        Track.Fix[] fixes = new Track.Fix[places.length];
        for (int i = 0; i < places.length; i++) {
            fixes[i] = track.fixAt(places[i]).orElse(new Track.Fix(track.x(places[i]), track.y(places[i]), 0.0, 0.0));
        }
        for (int i = 0; i < places.length; i++) {
            double last = Double.NEGATIVE_INFINITY;
            for (int j = 0; j < places.length; j++) {
                double dx = fixes[i].x() - fixes[j].x();
                double dy = fixes[i].y() - fixes[j].y();
                if (dx * dx + dy * dy > reach * reach) {
                    continue;
                }
                boolean alike = Math.cos(fixes[i].course() - fixes[j].course()) > 0.7;
                double distance = motion.distance(places[j]);
                if (alike && distance - last > 200.0) {
                    passes[i]++;
                    last = distance;
                }
            }
        }
        int most = Arrays.stream(passes).max().orElse(0);
        if (most < 2) {
            return Optional.empty();
        }
        return Optional.of(middleOfLongest(places, fixes, passes, most));
    }

    private static StartLine middleOfLongest(int[] places, Track.Fix[] fixes, int[] passes, int most) {
        int bestFrom = 0;
        int bestLength = 0;
        int from = 0;
        for (int i = 1; i <= places.length; i++) {
            boolean straightOn = i < places.length
                    && passes[i] >= most - 1
                    && Math.cos(fixes[i].course() - fixes[from].course()) > Math.cos(0.1);
            if (!straightOn) {
                if (passes[from] >= most - 1 && i - from > bestLength) {
                    bestLength = i - from;
                    bestFrom = from;
                }
                from = i;
            }
        }
        Track.Fix middle = fixes[bestFrom + bestLength / 2];
        return new StartLine(middle.x(), middle.y(), middle.course());
    }

    private static int[] everyMetres(Motion motion, Track track, double stepM) {
        List<Integer> places = new ArrayList<>();
        double next = 0.0;
        for (int i = 0; i < motion.size(); i++) {
            if (motion.distance(i) >= next && track.known(i) && motion.speed(i) > Motion.CRAWL_MPS) {
                places.add(i);
                next = motion.distance(i) + stepM;
            }
        }
        return places.stream().mapToInt(Integer::intValue).toArray();
    }
}
