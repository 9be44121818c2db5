package setwright.intake.map;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.numerics.Lag;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/*
 * Design note. A lone pressure of one circuit is the brake, as it has always been. Where both circuits are there, or one beside a brake
 * channel, each is what its name says. The car must slow down under each of them, and both must rise together: else neither is used.
 */

/** Finds the pressures of the two brake circuits. */
final class BrakePressureSearch {
    /** As for pedals: below it the effect cannot be told from chance and hills. */
    private static final double TELLING_CORRELATION = 0.3;
    /** One pedal works both circuits: they differ by the bias and by what a proportioning valve holds back. */
    private static final double TOGETHER = 0.8;
    /** A hard stop of a car takes 20 to 150 bar (common practice); taken where neither header nor sheet tells. */
    private static final double USUAL_PA = 50.0e5;

    private static final double OF_GREATEST = 0.7;

    private BrakePressureSearch() {}

    static void run(Search search) {
        Optional<Candidate> front = best(search, Quantity.BRAKE_PRESSURE_FRONT, Optional.empty());
        Optional<Candidate> rear = best(search, Quantity.BRAKE_PRESSURE_REAR, front);
        boolean other = search.named(Quantity.BRAKE).stream()
                .anyMatch(candidate ->
                        front.filter(one -> one.column() == candidate.column()).isEmpty()
                                && rear.filter(one -> one.column() == candidate.column())
                                        .isEmpty()
                                && (search.isGiven() || acts(search, candidate.column())));
        boolean lone = !other && !search.isGiven() && (front.isEmpty() || rear.isEmpty());
        boolean apart = front.isPresent()
                && rear.isPresent()
                && Lag.correlation(
                                search.signals.column(front.get().column()),
                                search.signals.column(rear.get().column()))
                        < TOGETHER;
        if (apart) {
            search.remark(
                    "Columns '%s' and '%s' are named like the pressures of both brake circuits but do not rise together; they"
                            + " are not used as such.",
                    search.header(front.orElseThrow().column()),
                    search.header(rear.orElseThrow().column()));
        }
        boolean named = front.or(() -> rear)
                .filter(candidate -> search.wordScore(candidate.column(), Quantity.BRAKE) > 0.0)
                .isPresent();
        if (apart || (lone && named)) {
            return;
        }
        front.ifPresent(candidate -> accept(search, Quantity.BRAKE_PRESSURE_FRONT, candidate));
        rear.ifPresent(candidate -> accept(search, Quantity.BRAKE_PRESSURE_REAR, candidate));
        if (!other && !search.isGiven() && (front.isPresent() || rear.isPresent())) {
            search.remark(
                    "No brake channel of its own was told apart; the pressures of the circuits say how hard is braked.");
        }
    }

    /** Tells whether a circuit's pressure was found. */
    static boolean found(Search search) {
        return search.get(Quantity.BRAKE_PRESSURE_FRONT).isPresent()
                || search.get(Quantity.BRAKE_PRESSURE_REAR).isPresent();
    }

    private static Optional<Candidate> best(Search search, Quantity quantity, Optional<Candidate> taken) {
        return search.named(quantity).stream()
                .filter(candidate -> taken.filter(other -> other.column() == candidate.column())
                        .isEmpty())
                .filter(candidate -> search.isGiven() || acts(search, candidate.column()))
                .findFirst();
    }

    private static boolean acts(Search search, int column) {
        return effect(search, column) < -TELLING_CORRELATION;
    }

    private static double effect(Search search, int column) {
        return Lag.correlation(search.signals.column(column), search.speedRise);
    }

    private static void accept(Search search, Quantity quantity, Candidate candidate) {
        double high = search.signals.quantile(candidate.column(), 0.999);
        double expected = search.car
                .map(CarSheet::brakePressureMaxPa)
                .filter(OptionalDouble::isPresent)
                .map(most -> OF_GREATEST * most.getAsDouble())
                .orElse(USUAL_PA);
        Unit unit = search.unit(candidate.column(), quantity)
                .orElseGet(() -> PullSearch.nearest(high / expected, List.copyOf(Units.of(Dimension.PRESSURE))));
        search.accept(
                quantity,
                candidate.column(),
                unit,
                1,
                0.0,
                acts(search, candidate.column()) ? Standing.CONFIRMED : Standing.SILENT,
                Search.text(
                        "it reaches %.4g %s and correlates %.2f with the loss of speed",
                        high, unit, -effect(search, candidate.column())));
    }
}
