package setwright.intake.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;

/**
 * Tells steering, yaw rate and lateral acceleration apart, whatever they are called.
 *
 * <p>In the domain of yaw rate all three are the same signal: {@code ay / v}, {@code r} and {@code steer * v} are proportional,
 * and proportional to the rate of turn of the path. A wrong column correlates less, because speed varies over a lap, and its
 * size fits no unit. All assignments of the likely columns to the three roles are weighed: agreement of each pair (Fisher's z)
 * plus words.
 *
 * <p><b>Source:</b> {@code ay = v r} and {@code delta = L r / v + K ay} of the steady single-track model (Milliken and Milliken,
 * Race Car Vehicle Dynamics, 1995, chapter 5; value from memory).
 */
final class LateralSearch {
    /** Below this speed dividing by speed makes noise, m/s. */
    private static final double SLOWEST_MPS = 6.0;

    private static final int MOST_COLUMNS = 9;
    private static final double WEAKEST_CORRELATION = 0.5;
    private static final double WORD_WEIGHT = 2.0;
    private static final double CONTRADICTION = -2.0;
    private static final List<Quantity> ROLES =
            List.of(Quantity.YAW_RATE, Quantity.LATERAL_ACCELERATION, Quantity.STEERING_WHEEL_ANGLE);

    private final Search search;
    private final List<Candidate> pool = new ArrayList<>();
    private final Map<String, double[]> turned = new ConcurrentHashMap<>();
    private final Map<String, Relation> relations = new ConcurrentHashMap<>();

    private LateralSearch(Search search) {
        this.search = search;
    }

    static void run(Search search) {
        LateralSearch lateral = new LateralSearch(search);
        lateral.fillPool();
        Map<Quantity, Integer> best = lateral.bestAssignment();
        LateralUnits.settle(search, lateral, best);
    }

    private void fillPool() {
        List<Candidate> all = new ArrayList<>();
        for (Quantity role : ROLES) {
            all.addAll(search.named(role));
        }
        all.addAll(search.named(Quantity.ROAD_WHEEL_ANGLE));
        all.addAll(search.nameless());
        all.sort(Comparator.comparingDouble(Candidate::wordScore).reversed());
        for (Candidate candidate : all) {
            boolean known = pool.stream().anyMatch(c -> c.column() == candidate.column());
            if (!known && pool.size() < MOST_COLUMNS) {
                pool.add(candidate);
            }
        }
    }

    /** A column as if it had the role, brought to the domain of yaw rate; NaN at low speed. */
    double[] asYawRate(int column, Quantity role) {
        return turned.computeIfAbsent(column + "/" + role, key -> {
            double[] out = search.signals.column(column).clone();
            double[] v = search.speedMps;
            for (int i = 0; i < out.length; i++) {
                double fast = v[i] > SLOWEST_MPS ? v[i] : Double.NaN;
                out[i] = switch (role) {
                    case LATERAL_ACCELERATION -> out[i] / fast;
                    case STEERING_WHEEL_ANGLE -> out[i] * fast;
                    default -> fast > 0.0 ? out[i] : Double.NaN;
                };
            }
            return out;
        });
    }

    Relation relation(int columnA, Quantity roleA, int columnB, Quantity roleB) {
        String key = columnA + "/" + roleA + "/" + columnB + "/" + roleB;
        return relations.computeIfAbsent(
                key, k -> Relation.between(asYawRate(columnA, roleA), asYawRate(columnB, roleB), Signals.STEP_S));
    }

    Optional<Relation> toCourse(int column, Quantity role) {
        return search.courseRate.map(course -> relations.computeIfAbsent(
                column + "/" + role, k -> Relation.between(course, asYawRate(column, role), Signals.STEP_S)));
    }

    private Map<Quantity, Integer> bestAssignment() {
        List<Map<Quantity, Integer>> all = new ArrayList<>();
        enumerate(0, new EnumMap<>(Quantity.class), all);
        double[] scores = all.parallelStream().mapToDouble(this::score).toArray();
        Map<Quantity, Integer> best = Map.of();
        double bestScore = 0.0;
        for (int i = 0; i < scores.length; i++) {
            if (scores[i] > bestScore) {
                best = all.get(i);
                bestScore = scores[i];
            }
        }
        return best;
    }

    private void enumerate(int role, Map<Quantity, Integer> partial, List<Map<Quantity, Integer>> all) {
        if (role == ROLES.size()) {
            all.add(new EnumMap<>(partial));
            return;
        }
        enumerate(role + 1, partial, all);
        for (Candidate candidate : pool) {
            boolean allowed = !search.isGiven() || wordScore(candidate.column(), ROLES.get(role)) > 0.0;
            if (allowed && !partial.containsValue(candidate.column())) {
                partial.put(ROLES.get(role), candidate.column());
                enumerate(role + 1, partial, all);
                partial.remove(ROLES.get(role));
            }
        }
    }

    private double wordScore(int column, Quantity role) {
        double own = search.wordScore(column, role);
        return role == Quantity.STEERING_WHEEL_ANGLE
                ? Math.max(own, search.wordScore(column, Quantity.ROAD_WHEEL_ANGLE))
                : own;
    }

    private double score(Map<Quantity, Integer> assignment) {
        double score = 0.0;
        List<Map.Entry<Quantity, Integer>> chosen = new ArrayList<>(assignment.entrySet());
        for (int i = 0; i < chosen.size(); i++) {
            Quantity role = chosen.get(i).getKey();
            int column = chosen.get(i).getValue();
            double words = wordScore(column, role);
            // A column without words must earn its place by physics.
            score += WORD_WEIGHT * words - (words == 0.0 ? 1.0 : 0.0);
            score += toCourse(column, role)
                    .map(relation -> agreement(relation, LateralUnits.fits(search, column, role, relation.slope())))
                    .orElse(0.0);
            for (int j = 0; j < i; j++) {
                Quantity other = chosen.get(j).getKey();
                int otherColumn = chosen.get(j).getValue();
                Relation relation = relation(otherColumn, other, column, role);
                score += agreement(
                        relation, LateralUnits.fits(search, otherColumn, other, column, role, relation.slope()));
            }
        }
        return score;
    }

    private static double agreement(Relation relation, boolean sizeFits) {
        boolean follows = Math.abs(relation.correlation()) >= WEAKEST_CORRELATION;
        return follows && sizeFits ? relation.strength() : CONTRADICTION;
    }
}
