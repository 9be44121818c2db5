package setwright.app.propose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.replay.Pool;

/**
 * What a table of weighed changes is read by: the target by itself, wherever it lies, then the phases in slower and in faster corners.
 *
 * @param target   phase and class of the target; empty without one
 * @param phases   in driving order: those in which any change does something, and the target's
 * @param classes  slow and fast corners; medium ones too where the laps have only one of those or the other
 */
public record WeighedColumns(Optional<Pool> target, List<Phase> phases, List<SpeedClass> classes) {
    public WeighedColumns {
        phases = List.copyOf(phases);
        classes = List.copyOf(classes);
    }

    /** Returns those of a proposal. */
    public static WeighedColumns of(Proposal proposal) {
        List<Candidate> all = all(proposal).toList();
        Optional<Pool> target =
                proposal.target().map(found -> any(all, found.pool()) ? found.pool() : Pool.all(found.phase()));
        List<Phase> phases = new ArrayList<>(List.of(Phase.ENTRY, Phase.MID, Phase.EXIT));
        if (target.filter(pool -> pool.phase() == Phase.BRAKING).isPresent()) {
            phases.add(0, Phase.BRAKING);
        }
        List<SpeedClass> classes = new ArrayList<>(Arrays.stream(SpeedClass.values())
                .filter(speed -> phases.stream().anyMatch(phase -> any(all, Pool.of(phase, speed))))
                .toList());
        if (classes.contains(SpeedClass.LOW) && classes.contains(SpeedClass.HIGH)) {
            classes.remove(SpeedClass.MEDIUM);
        }
        return new WeighedColumns(target, phases, classes);
    }

    /** Returns all that was weighed: the chosen change, the others, those refused. */
    public static Stream<Candidate> all(Proposal proposal) {
        return Stream.of(proposal.chosen().stream(), proposal.others().stream(), proposal.refused().stream())
                .flatMap(candidates -> candidates);
    }

    /** Returns a column for each phase and class in which any change does something. */
    public List<Pool> pools(Proposal proposal) {
        List<Candidate> all = all(proposal).toList();
        return phases.stream()
                .flatMap(phase -> classes.stream().map(speed -> Pool.of(phase, speed)))
                .filter(pool -> any(all, pool))
                .toList();
    }

    /** Returns what the corners of a class are called in the heading of a column. */
    public static String words(Optional<SpeedClass> speedClass) {
        return speedClass
                .map(speed -> switch (speed) {
                    case LOW -> "slower";
                    case MEDIUM -> "medium";
                    case HIGH -> "faster";
                })
                .orElse("all");
    }

    private static boolean any(List<Candidate> all, Pool pool) {
        return all.stream()
                .anyMatch(candidate -> candidate
                        .prediction()
                        .balance(pool.phase(), pool.speedClass())
                        .isPresent());
    }
}
