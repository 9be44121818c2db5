package setwright.intake.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds the longitudinal acceleration: it follows the rate of change of the speed, forward positive. */
final class PullSearch {
    /** A column without words must follow closely to be taken for it. */
    private static final double NAMELESS_CORRELATION = 0.85;

    static final double NAMED_CORRELATION = 0.5;

    private PullSearch() {}

    private record Choice(Candidate candidate, Relation relation, double score) {}

    static void run(Search search) {
        List<Candidate> candidates = new ArrayList<>(search.named(Quantity.LONGITUDINAL_ACCELERATION));
        candidates.addAll(search.nameless());
        Optional<Choice> best = Optional.empty();
        for (Candidate candidate : candidates) {
            Relation relation =
                    Relation.between(search.speedRise, search.signals.column(candidate.column()), Signals.STEP_S);
            double least = candidate.wordScore() > 0.0 ? NAMED_CORRELATION : NAMELESS_CORRELATION;
            double score = relation.strength() + 2.0 * candidate.wordScore();
            if (Math.abs(relation.correlation()) >= least
                    && (best.isEmpty() || score > best.get().score())) {
                best = Optional.of(new Choice(candidate, relation, score));
            }
        }
        if (best.isPresent()) {
            accept(search, best.get());
        } else if (!candidates.isEmpty() && candidates.get(0).wordScore() > 0.0) {
            silent(search, candidates.get(0));
        }
    }

    private static void accept(Search search, Choice choice) {
        Relation relation = choice.relation();
        Unit unit = nearest(Math.abs(relation.slope()), Units.of(Dimension.ACCELERATION));
        Optional<Unit> declared = search.declaredUnit(choice.candidate().column(), Quantity.LONGITUDINAL_ACCELERATION);
        double ratio = Math.abs(relation.slope()) * unit.factor();
        boolean fits = Math.abs(Math.log(ratio)) < 0.4;
        Unit used = fits ? unit : declared.orElse(unit);
        String physics = Search.text(
                "in %s it is %.2f times the rate of change of the speed (correlation %.2f, lag %.2f s)",
                used, relation.slope() * used.factor(), Math.abs(relation.correlation()), relation.lagS());
        search.accept(
                Quantity.LONGITUDINAL_ACCELERATION,
                choice.candidate().column(),
                used,
                relation.correlation() < 0.0 ? -1 : 1,
                0.0,
                fits ? Standing.CONFIRMED : Standing.SILENT,
                physics);
        declared.filter(unitInHeader -> !unitInHeader.equals(used))
                .ifPresent(unitInHeader -> search.remark(
                        "The header of '%s' says %s, but the data are in %s: %s.",
                        search.header(choice.candidate().column()), unitInHeader, used, physics));
    }

    private static void silent(Search search, Candidate candidate) {
        Relation relation =
                Relation.between(search.speedRise, search.signals.column(candidate.column()), Signals.STEP_S);
        search.remark(
                "Column '%s' is named like a longitudinal acceleration but does not follow the change of speed"
                        + " (correlation %.2f); it is not used.",
                search.header(candidate.column()), relation.correlation());
        search.claimed.add(candidate.column());
    }

    /** Returns the unit that brings the ratio nearest to one. */
    static Unit nearest(double ratio, List<Unit> units) {
        Unit best = units.get(0);
        for (Unit unit : units) {
            if (Math.abs(Math.log(ratio * unit.factor())) < Math.abs(Math.log(ratio * best.factor()))) {
                best = unit;
            }
        }
        return best;
    }
}
