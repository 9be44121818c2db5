package setwright.intake.map;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Standing;

/** What the data say of one role, in a sentence. */
record LateralEvidence(Standing standing, String text) {
    static LateralEvidence of(
            Search search,
            LateralSearch lateral,
            Map<Quantity, Integer> chosen,
            Map<Quantity, LateralUnits.Reading> readings,
            Quantity role) {
        int column = Search.at(chosen, role);
        LateralUnits.Reading own = Search.at(readings, role);
        Optional<Relation> course = lateral.toCourse(column, role);
        Relation relation;
        String against;
        double scale;
        if (course.isPresent()) {
            relation = course.get();
            against = "the rate of turn of the path";
            scale = own.unit().factor();
        } else {
            Optional<Quantity> other = chosen.keySet().stream()
                    .filter(q -> q != role)
                    .max(Comparator.comparingDouble(
                            q -> Math.abs(lateral.relation(Search.at(chosen, q), q, column, role)
                                    .correlation())));
            if (other.isEmpty()) {
                return new LateralEvidence(Standing.SILENT, "");
            }
            LateralUnits.Reading reading = Search.at(readings, other.get());
            relation = lateral.relation(Search.at(chosen, other.get()), other.get(), column, role);
            against = reading.quantity().words();
            double perYaw =
                    reading.quantity() == Quantity.YAW_RATE || reading.quantity() == Quantity.LATERAL_ACCELERATION
                            ? 1.0
                            : search.wheelbaseM();
            scale = own.unit().factor() / reading.unit().factor() * perYaw;
        }
        double size = relation.slope() * scale;
        boolean good = Math.abs(relation.correlation()) > 0.8;
        String text = switch (role) {
            case YAW_RATE ->
                Search.text(
                        "in %s it is %.2f times %s (correlation %.3f, lag %.2f s)",
                        own.unit(), size, against, Math.abs(relation.correlation()), relation.lagS());
            case LATERAL_ACCELERATION ->
                Search.text(
                        "in %s, divided by speed, it is %.2f times %s (correlation %.3f, lag %.2f s)",
                        own.unit(), size, against, Math.abs(relation.correlation()), relation.lagS());
            default ->
                Search.text(
                        "in %s it is %.1f times wheelbase / speed times %s (correlation %.3f, lag %.2f s), as a %s is",
                        own.unit(),
                        size / search.wheelbaseM(),
                        against,
                        Math.abs(relation.correlation()),
                        relation.lagS(),
                        own.quantity().words());
        };
        return new LateralEvidence(good ? Standing.CONFIRMED : Standing.SILENT, text);
    }
}
