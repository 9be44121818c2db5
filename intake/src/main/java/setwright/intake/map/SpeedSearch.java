package setwright.intake.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/**
 * Finds the speed and its unit. Each unit is weighed by how well it fits the header, the position, the distance, the
 * accelerations and what cars can do.
 */
final class SpeedSearch {
    /** Fastest point of a recording that makes sense, m/s. */
    private static final double SLOWEST_TOP_MPS = 8.0;

    private static final double FASTEST_TOP_MPS = 115.0;
    /** Relative scatter expected of a ratio against position, and against sensors that tilt with the body. */
    private static final double POSITION_SIGMA = 0.03;

    private static final double SENSOR_SIGMA = 0.06;
    /** No single witness may outweigh all others: it can be broken. */
    private static final double MOST_PER_WITNESS = 6.0;
    /** Log-likelihood lead that counts as certain; exp(3) is odds of twenty to one. */
    private static final double CLEAR_LEAD = 3.0;

    private SpeedSearch() {}

    private record Weighed(Unit unit, double score, List<String> witnesses) {}

    private record Choice(int column, double score, Weighed best, double lead) {}

    static void run(Search search) {
        List<Candidate> candidates = new ArrayList<>(search.named(Quantity.SPEED));
        if (candidates.isEmpty()) {
            candidates.addAll(search.nameless());
        }
        Optional<Choice> chosen = Optional.empty();
        for (Candidate candidate : candidates) {
            if (search.signals.quantile(candidate.column(), 0.01) < -1.0) {
                continue;
            }
            Choice choice = weigh(search, candidate);
            boolean witnessed = !choice.best().witnesses().isEmpty();
            if ((candidate.wordScore() > 0.0 || witnessed)
                    && (chosen.isEmpty() || choice.score() > chosen.get().score())) {
                chosen = Optional.of(choice);
            }
        }
        chosen.ifPresent(choice -> accept(search, choice));
    }

    private static void accept(Search search, Choice choice) {
        int column = choice.column();
        Unit unit = choice.best().unit();
        List<String> witnesses = choice.best().witnesses();
        boolean certain = choice.lead() >= CLEAR_LEAD && !witnesses.isEmpty();
        search.declaredUnit(column, Quantity.SPEED)
                .filter(declared -> !declared.equals(unit))
                .ifPresent(declared -> search.remark(
                        "The header of '%s' says %s, but the data are in %s: %s.",
                        search.header(column), declared, unit, String.join("; ", witnesses)));
        if (choice.lead() < 1.0 && search.declaredUnit(column, Quantity.SPEED).isEmpty() && !search.isGiven()) {
            search.remark(
                    "The unit of '%s' could not be told for certain; %s is taken. Say it in the channel map if that is wrong.",
                    search.header(column), unit);
        }
        search.accept(
                Quantity.SPEED,
                column,
                unit,
                1,
                0.0,
                certain ? Standing.CONFIRMED : Standing.SILENT,
                String.join("; ", witnesses));
        search.speedMps = Signals.scaled(search.signals.column(column), unit.factor());
        search.speedRise = search.signals.derivative(search.speedMps);
    }

    private static Choice weigh(Search search, Candidate candidate) {
        Weighed best = new Weighed(Units.get(Dimension.SPEED, "m/s"), Double.NEGATIVE_INFINITY, List.of());
        double second = Double.NEGATIVE_INFINITY;
        Optional<Unit> declared = search.declaredUnit(candidate.column(), Quantity.SPEED);
        Witnesses witnesses = Witnesses.of(search, candidate.column());
        for (Unit unit : Units.of(Dimension.SPEED)) {
            Weighed weighed = witnesses.judge(unit);
            double score = weighed.score();
            if (declared.isPresent()) {
                score += declared.get().equals(unit) ? CLEAR_LEAD : 0.0;
            }
            if (score > best.score()) {
                second = best.score();
                best = new Weighed(unit, score, weighed.witnesses());
            } else {
                second = Math.max(second, score);
            }
        }
        return new Choice(candidate.column(), 4.0 * candidate.wordScore() + best.score(), best, best.score() - second);
    }

    /** What the other columns say about one candidate, worked out once for all units. */
    private record Witnesses(
            double top,
            Optional<Relation> path,
            Optional<Relation> pull,
            Optional<Relation> turn,
            List<Double> pullUnits,
            List<Double> turnUnits) {
        static Witnesses of(Search search, int column) {
            Signals signals = search.signals;
            double[] speed = signals.column(column);
            Optional<Relation> path = search.pathSpeed.map(p -> Relation.between(p, speed, Signals.STEP_S));
            double[] rise = signals.derivative(speed);
            Optional<Integer> along = first(search, Quantity.LONGITUDINAL_ACCELERATION, column);
            Optional<Relation> pull = along.map(i -> Relation.between(rise, signals.column(i), Signals.STEP_S));
            Optional<Integer> yaw = first(search, Quantity.YAW_RATE, column);
            Optional<Integer> lateral = first(search, Quantity.LATERAL_ACCELERATION, column);
            Optional<Relation> turn = Optional.empty();
            List<Double> turnUnits = new ArrayList<>();
            if (yaw.isPresent() && lateral.isPresent()) {
                double[] product = Signals.combine(speed, signals.column(yaw.get()), (v, r) -> v * r);
                turn = Optional.of(Relation.between(product, signals.column(lateral.get()), Signals.STEP_S));
                for (double rate : factors(search, yaw, Quantity.YAW_RATE, 1.0, Math.PI / 180.0)) {
                    factors(search, lateral, Quantity.LATERAL_ACCELERATION, 1.0, Units.STANDARD_GRAVITY)
                            .forEach(acceleration -> turnUnits.add(acceleration / rate));
                }
            }
            List<Double> pullUnits =
                    factors(search, along, Quantity.LONGITUDINAL_ACCELERATION, 1.0, Units.STANDARD_GRAVITY);
            return new Witnesses(signals.quantile(column, 0.995), path, pull, turn, pullUnits, turnUnits);
        }

        /** The usual units of a column as factors to SI, and the one its header names. */
        private static List<Double> factors(
                Search search, Optional<Integer> column, Quantity quantity, double... usual) {
            List<Double> factors = new ArrayList<>();
            for (double factor : usual) {
                factors.add(factor);
            }
            column.flatMap(index -> search.declaredUnit(index, quantity))
                    .filter(unit -> unit.dimension() == Dimension.of(quantity))
                    .ifPresent(unit -> factors.add(unit.factor()));
            return factors;
        }

        private static Optional<Integer> first(Search search, Quantity quantity, int not) {
            return search.named(quantity).stream()
                    .map(Candidate::column)
                    .filter(column -> column != not)
                    .findFirst();
        }

        Weighed judge(Unit unit) {
            double factor = unit.factor();
            List<String> witnesses = new ArrayList<>();
            double score = 0.0;
            double fastest = top * factor;
            score -= fastest < SLOWEST_TOP_MPS || fastest > FASTEST_TOP_MPS ? 4.0 : 0.0;
            // Within reason, faster than a car ever goes in a corner and slower than almost all can go is likelier.
            score -= Math.abs(Math.log(fastest / 50.0));
            if (path.isPresent() && path.get().correlation() > 0.9) {
                double ratio = path.get().slope() * factor;
                score += agreement(ratio, POSITION_SIGMA);
                witnesses.add(Search.text(
                        "it is %.3f times the speed along the positions (correlation %.3f)",
                        ratio, path.get().correlation()));
            }
            if (pull.isPresent() && Math.abs(pull.get().correlation()) > 0.6) {
                double ratio = nearestToOne(Math.abs(pull.get().slope()) / factor, pullUnits);
                score += 0.5 * agreement(ratio, SENSOR_SIGMA);
                witnesses.add(Search.text(
                        "the longitudinal acceleration is %.2f times its rate of change (correlation %.2f)",
                        ratio, Math.abs(pull.get().correlation())));
            }
            if (turn.isPresent() && Math.abs(turn.get().correlation()) > 0.8) {
                double ratio = nearestToOne(Math.abs(turn.get().slope()) / factor, turnUnits);
                score += agreement(ratio, SENSOR_SIGMA);
                witnesses.add(Search.text(
                        "the lateral acceleration is %.2f times speed times yaw rate (correlation %.2f)",
                        ratio, Math.abs(turn.get().correlation())));
            }
            return new Weighed(unit, score, witnesses);
        }

        private static double nearestToOne(double slope, List<Double> factors) {
            double best = slope * factors.get(0);
            for (double factor : factors) {
                double ratio = slope * factor;
                best = Math.abs(Math.log(ratio)) < Math.abs(Math.log(best)) ? ratio : best;
            }
            return best;
        }

        private static double agreement(double ratio, double sigma) {
            double off = Math.log(ratio) / sigma;
            return -Math.min(MOST_PER_WITNESS, 0.5 * off * off);
        }
    }
}
