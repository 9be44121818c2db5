package setwright.app.truthbench;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was asked for.
 *
 * @param seed    of the draw
 * @param first   number of the first case
 * @param cases   how many
 * @param only    fault or kind; empty for any
 * @param keep    folder for recordings, sheets and truths; empty to keep none
 * @param baseline whether answers may hold each case against a stint of the car in good order
 * @param gripPercent how much more the tyres gripped on that day, or less: every other pair of cases
 * @param minutes after which no more cases are begun; those begun are finished and counted
 * @param record  whether to write the page
 * @param hands   whether only the gestures of the hands are asked
 */
record BenchOptions(
        long seed,
        int first,
        int cases,
        Optional<String> only,
        Optional<Path> keep,
        boolean baseline,
        double gripPercent,
        int minutes,
        boolean record,
        boolean hands) {
    /** For figures that are reported; nothing may be tuned on its cases. */
    static final long REPORTING_SEED = 7_305L;

    /** For everything that is tried out. */
    static final long TUNING_SEED = 1L;

    static final int USUAL_CASES = 200;

    static final String USAGE = """
            usage: ./truthbench [--cases N] [--seed S] [--first I] [--only FAULT] [--keep FOLDER] [--baseline [--grip PERCENT]] [--minutes M] [--record] [--hands] | ./truthbench --floor
            --seed is %d (for tuning) unless --record asks for %d (for reporting, with at least %d cases)""".formatted(TUNING_SEED, REPORTING_SEED, USUAL_CASES);

    /** Reads arguments; empty when they cannot be understood. */
    static Optional<BenchOptions> read(List<String> args) {
        long seed = TUNING_SEED;
        int first = 0;
        int cases = USUAL_CASES;
        Optional<String> only = Optional.empty();
        Optional<Path> keep = Optional.empty();
        double gripPercent = 0.0;
        int minutes = 1_000;
        boolean record = args.contains("--record");
        boolean baseline = args.contains("--baseline");
        boolean hands = args.contains("--hands");
        boolean seeded = false;
        Deque<String> left = new ArrayDeque<>(args);
        try {
            while (!left.isEmpty()) {
                String option = left.pop();
                switch (option) {
                    case "--record", "--baseline", "--hands" -> {}
                    case "--cases" -> cases = Integer.parseInt(left.pop());
                    case "--first" -> first = Integer.parseInt(left.pop());
                    case "--seed" -> {
                        seed = Long.parseLong(left.pop());
                        seeded = true;
                    }
                    case "--minutes" -> minutes = Integer.parseInt(left.pop());
                    case "--grip" -> gripPercent = Double.parseDouble(left.pop());
                    case "--only" -> only = Optional.of(left.pop());
                    case "--keep" -> keep = Optional.of(Path.of(left.pop()));
                    default -> {
                        return Optional.empty();
                    }
                }
            }
        } catch (NumberFormatException | java.util.NoSuchElementException e) {
            return Optional.empty();
        }
        boolean all = cases >= USUAL_CASES && first == 0 && only.isEmpty() && !seeded && gripPercent == 0.0;
        boolean unused = (hands && (baseline || keep.isPresent())) || (gripPercent != 0.0 && !baseline);
        if (unused || cases < 1 || minutes < 1 || first < 0 || (record && (hands || !all))) {
            return Optional.empty();
        }
        return Optional.of(new BenchOptions(
                record ? REPORTING_SEED : seed,
                first,
                cases,
                only,
                keep,
                baseline,
                gripPercent,
                minutes,
                record,
                hands));
    }

    /** Returns how much more grip there was on the day that each case is held against, as a share; empty without such a day. */
    OptionalDouble otherDay() {
        return baseline ? OptionalDouble.of(0.01 * gripPercent) : OptionalDouble.empty();
    }
}
