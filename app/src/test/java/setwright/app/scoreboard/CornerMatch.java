package setwright.app.scoreboard;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import setwright.core.circuit.Corner;

/**
 * Which corner of the answer lies in which corner of the truth, by place and direction, so that one corner too many does not
 * shift all later ones.
 */
final class CornerMatch {
    /** Farthest that an apex may lie from the true one to count as found. */
    private static final double APEX_WITHIN_M = 15.0;

    private final Truth truth;
    private final List<Corner> found;
    private final Map<Integer, Truth.Corner> trueByFound = new HashMap<>();

    private CornerMatch(Truth truth, List<Corner> found) {
        this.truth = truth;
        this.found = found;
        for (Corner corner : found) {
            truth.corners().stream()
                    .filter(real -> lies(corner, real))
                    .findFirst()
                    .ifPresent(real -> trueByFound.put(corner.number(), real));
        }
    }

    static CornerMatch of(Truth truth, List<Corner> found) {
        return new CornerMatch(truth, found);
    }

    /** Returns the true corner that a corner of the answer lies in. */
    Optional<Truth.Corner> real(int foundNumber) {
        return Optional.ofNullable(trueByFound.get(foundNumber));
    }

    /** Returns the true corners that have number, direction and apex in common with one of the answer. */
    Set<Integer> inPlace() {
        Set<Integer> numbers = new TreeSet<>();
        for (Truth.Corner real : truth.corners()) {
            boolean same = found.stream()
                    .anyMatch(corner -> corner.number() == real.corner()
                            && sameDirection(corner, real)
                            && Math.abs(apexError(corner, real)) <= APEX_WITHIN_M);
            if (same) {
                numbers.add(real.corner());
            }
        }
        return numbers;
    }

    /** Returns the numbers of the answer's corners that lie in no true corner. */
    Set<Integer> extra() {
        Set<Integer> numbers = new TreeSet<>();
        found.stream()
                .map(Corner::number)
                .filter(number -> real(number).isEmpty())
                .forEach(numbers::add);
        return numbers;
    }

    /** Returns for each true corner that is not in place what the answer has there, in words. */
    String misses() {
        Set<Integer> inPlace = inPlace();
        StringBuilder words = new StringBuilder();
        for (Truth.Corner real : truth.corners()) {
            if (!inPlace.contains(real.corner())) {
                String here = found.stream()
                        .filter(corner -> lies(corner, real))
                        .findFirst()
                        .map(corner -> String.format(
                                Locale.ROOT, "as %d, apex %+.0f m", corner.number(), apexError(corner, real)))
                        .orElse("none");
                words.append(words.isEmpty() ? "" : "; ")
                        .append(real.corner())
                        .append(": ")
                        .append(here);
            }
        }
        return words.toString();
    }

    /** Returns the true numbers of some corners of the answer; those that are no corner are left out. */
    Set<Integer> realNumbers(Collection<Integer> foundNumbers) {
        Set<Integer> numbers = new TreeSet<>();
        for (int number : foundNumbers) {
            real(number).ifPresent(real -> numbers.add(real.corner()));
        }
        return numbers;
    }

    /** The apex must lie between the first braking and the end of the exit. */
    private boolean lies(Corner corner, Truth.Corner real) {
        double apex = real.sApexM() + apexError(corner, real);
        double from = real.phaseBoundsM().values().stream()
                .filter(bounds -> bounds != null)
                .mapToDouble(bounds -> bounds.get(0))
                .min()
                .orElse(real.sApexM());
        double to = real.phaseBoundsM().values().stream()
                .filter(bounds -> bounds != null)
                .mapToDouble(bounds -> bounds.get(1))
                .max()
                .orElse(real.sApexM());
        return sameDirection(corner, real) && apex >= from && apex <= to;
    }

    /** Returns how far the apex lies behind the true one, the short way round the lap, m. */
    private double apexError(Corner corner, Truth.Corner real) {
        return Math.IEEEremainder(corner.apexM() - real.sApexM(), truth.lapLengthM());
    }

    private static boolean sameDirection(Corner corner, Truth.Corner real) {
        return corner.direction().name().equalsIgnoreCase(real.direction());
    }
}
