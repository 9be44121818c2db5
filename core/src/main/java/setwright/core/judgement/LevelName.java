package setwright.core.judgement;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import setwright.core.handling.Phase;

/*
 * Design note. Whoever takes the largest of nine measured levels takes the one whose error was the largest, and calls a fault of all
 * corners one of the fast corners because two or three of them were measured too large. Asked is not which level is the largest but which
 * name would be right, over all that the levels may be. Of 131 simulated faults the largest level names 109 rightly, this 117; 115 to 118
 * with any share of common doubt between none and four fifths.
 */

/** Finds the phase and the corners by which a problem is most probably called rightly. */
final class LevelName {
    /** Share of the doubt that slow and fast corners have in common: the reference is that of both (our choice). */
    private static final double COMMON = 0.5;
    /** A share of right names is then good to a hundredth. */
    private static final int DRAWS = 4_000;

    private final List<BelievedLevel> levels;
    private final int[] right;

    private LevelName(List<BelievedLevel> levels) {
        this.levels = levels;
        this.right = new int[levels.size()];
    }

    /** Returns the level whose place and sign are most probably right names for the problem; empty without levels. */
    static Optional<BelievedLevel> of(List<BelievedLevel> levels) {
        if (levels.isEmpty()) {
            return Optional.empty();
        }
        LevelName names = new LevelName(levels);
        Random random = new Random(1); // the same for all, so that the same laps get the same name
        for (int i = 0; i < DRAWS; i++) {
            names.count(names.draw(random));
        }
        return IntStream.range(0, levels.size())
                .boxed()
                .max(Comparator.comparingInt((Integer i) -> names.right[i])
                        .thenComparingDouble(i -> Math.abs(levels.get(i).meanRad())))
                .map(levels::get);
    }

    /** What the levels may be: those of one phase go together in part, and all corners go with the ends. */
    private double[] draw(Random random) {
        double[] rad = new double[levels.size()];
        for (Phase phase : BalanceBelief.PHASES) {
            double common = Math.sqrt(COMMON) * random.nextGaussian();
            double slow = common + Math.sqrt(1.0 - COMMON) * random.nextGaussian();
            double fast = common + Math.sqrt(1.0 - COMMON) * random.nextGaussian();
            double both = (slow + fast) / Math.sqrt(2.0 + 2.0 * COMMON);
            for (int i = 0; i < rad.length; i++) {
                BelievedLevel level = levels.get(i);
                if (level.phase() == phase) {
                    double off = switch (level.speed()) {
                        case LOW -> slow;
                        case HIGH -> fast;
                        case ALL -> both;
                    };
                    rad[i] = level.meanRad() + level.deviationRad() * off;
                }
            }
        }
        return rad;
    }

    /** Counts for each level whether it would be a right name if the levels were these. */
    private void count(double[] rad) {
        int most = 0;
        for (int i = 1; i < rad.length; i++) {
            most = Math.abs(rad[i]) > Math.abs(rad[most]) ? i : most;
        }
        int largest = most;
        double top = rad[largest];
        Set<SpeedRange> speeds = ProblemWords.speeds(levels.get(largest).speed(), speed -> share(rad, largest, speed));
        Set<Phase> phases = EnumSet.of(levels.get(largest).phase());
        for (int i = 0; i < rad.length; i++) {
            if (speeds.contains(levels.get(i).speed()) && ProblemWords.sharesPhase(rad[i] / top)) {
                phases.add(levels.get(i).phase());
            }
        }
        for (int i = 0; i < rad.length; i++) {
            BelievedLevel level = levels.get(i);
            boolean named = phases.contains(level.phase()) && speeds.contains(level.speed());
            right[i] += named && level.meanRad() * top > 0.0 ? 1 : 0;
        }
    }

    /** Zero when there is no such corner. */
    private double share(double[] rad, int largest, SpeedRange speed) {
        for (int i = 0; i < rad.length; i++) {
            if (levels.get(i).phase() == levels.get(largest).phase()
                    && levels.get(i).speed() == speed) {
                return rad[i] / rad[largest];
            }
        }
        return 0.0;
    }
}
