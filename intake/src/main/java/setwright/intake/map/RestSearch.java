package setwright.intake.map;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hipparchus.stat.StatUtils;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds what is told by words and by the look of the numbers alone: counters, gear, engine speed, temperatures, travel, fuel. */
final class RestSearch {
    private static final Set<Quantity> ONE_EACH = EnumSet.of(
            Quantity.TYRE_TEMPERATURE_FRONT_LEFT,
            Quantity.TYRE_TEMPERATURE_FRONT_RIGHT,
            Quantity.TYRE_TEMPERATURE_REAR_LEFT,
            Quantity.TYRE_TEMPERATURE_REAR_RIGHT);
    private static final Set<String> VOLUMES = Set.of("l", "gal");

    private RestSearch() {}

    static void run(Search search) {
        whole(search, Quantity.LAP_TRIGGER, values -> Robust.quantile(values, 0.9) == Robust.quantile(values, 0.5));
        whole(search, Quantity.LAP_NUMBER, RestSearch::neverFallsOften);
        whole(search, Quantity.GEAR, values -> StatUtils.max(values) <= 20.0);
        engine(search);
        for (Quantity quantity : Quantity.values()) {
            switch (Dimension.of(quantity)) {
                case TEMPERATURE -> {
                    if (ONE_EACH.contains(quantity)) {
                        temperature(search, quantity);
                    }
                }
                case LENGTH -> {
                    if (quantity.name().startsWith("SUSPENSION")) {
                        travel(search, quantity);
                    }
                }
                case MASS -> {
                    plain(search, quantity, Units.get(Dimension.MASS, "kg"));
                    tellDensity(search, quantity);
                }
                default -> {
                    if (quantity == Quantity.VERTICAL_ACCELERATION) {
                        vertical(search);
                    }
                }
            }
            OptionalSearch.find(search, quantity);
        }
    }

    /** A volume is weighed with a density that nobody measured. */
    private static void tellDensity(Search search, Quantity quantity) {
        search.get(quantity)
                .map(found -> found.entry().unit())
                .filter(unit -> VOLUMES.contains(unit.symbol()))
                .ifPresent(unit -> search.remark(
                        "The fuel is recorded as a volume: one litre is taken as %.3f kg, the middle of what petrol may have.",
                        Units.get(Dimension.MASS, "l").factor()));
    }

    private static void whole(Search search, Quantity quantity, Predicate<double[]> plausible) {
        for (Candidate candidate : search.named(quantity)) {
            double[] values = Robust.finite(search.signals.raw(candidate.column()));
            if (Arrays.stream(values).allMatch(value -> value == Math.rint(value)) && plausible.test(values)) {
                search.accept(
                        quantity,
                        candidate.column(),
                        Units.get(Dimension.NUMBER, "1"),
                        1,
                        0.0,
                        Standing.SILENT,
                        Search.text("whole numbers from %.0f to %.0f", StatUtils.min(values), StatUtils.max(values)));
                return;
            }
            search.remark(
                    "Column '%s' is named like a %s but does not count like one; it is not used.",
                    search.header(candidate.column()), quantity.words());
        }
    }

    private static boolean neverFallsOften(double[] values) {
        long falls = 0;
        for (int i = 1; i < values.length; i++) {
            falls += values[i] < values[i - 1] ? 1 : 0;
        }
        return falls <= 1;
    }

    private static void engine(Search search) {
        Optional<Candidate> first = search.named(Quantity.ENGINE_SPEED).stream().findFirst();
        if (first.isEmpty()) {
            return;
        }
        int column = first.get().column();
        double high = search.signals.quantile(column, 0.99);
        // Engines turn at 2000 to 20000 rpm, that is 200 to 2000 rad/s or 33 to 330 revolutions a second.
        Unit byRange = Units.get(Dimension.ANGULAR_RATE, high > 2000.0 ? "rpm" : high > 350.0 ? "rad/s" : "rev/s");
        Unit unit = search.unit(column, Quantity.ENGINE_SPEED).orElse(byRange);
        search.accept(
                Quantity.ENGINE_SPEED,
                column,
                unit,
                1,
                0.0,
                unit.equals(byRange) ? Standing.CONFIRMED : Standing.SILENT,
                Search.text("it reaches %.4g %s", high, unit));
    }

    private static void temperature(Search search, Quantity quantity) {
        search.named(quantity).stream().findFirst().ifPresent(candidate -> {
            double middle = search.signals.quantile(candidate.column(), 0.5);
            Unit unit = search.unit(candidate.column(), quantity)
                    .orElse(Units.get(Dimension.TEMPERATURE, middle > 250.0 ? "K" : "degC"));
            search.accept(
                    quantity,
                    candidate.column(),
                    unit,
                    1,
                    0.0,
                    Standing.SILENT,
                    Search.text("its median is %.4g %s", middle, unit));
        });
    }

    private static void travel(Search search, Quantity quantity) {
        search.named(quantity).stream().findFirst().ifPresent(candidate -> {
            double span = search.signals.quantile(candidate.column(), 0.999)
                    - search.signals.quantile(candidate.column(), 0.001);
            // No suspension moves a metre.
            Unit unit = search.unit(candidate.column(), quantity)
                    .orElse(Units.get(Dimension.LENGTH, span > 1.0 ? "mm" : "m"));
            int sign = search.givenEntry(quantity).map(MapEntry::sign).orElse(1);
            search.accept(
                    quantity,
                    candidate.column(),
                    unit,
                    sign,
                    0.0,
                    Standing.SILENT,
                    Search.text("it moves by %.3g %s", span, unit));
        });
    }

    private static void vertical(Search search) {
        search.named(Quantity.VERTICAL_ACCELERATION).stream().findFirst().ifPresent(candidate -> {
            double middle = search.signals.quantile(candidate.column(), 0.5);
            double spread = search.signals.quantile(candidate.column(), 0.99)
                    - search.signals.quantile(candidate.column(), 0.01);
            Unit unit = search.unit(candidate.column(), Quantity.VERTICAL_ACCELERATION)
                    .orElse(Units.get(Dimension.ACCELERATION, Math.abs(middle) > 5.0 || spread > 6.0 ? "m/s2" : "g"));
            // At rest a specific force reads +1 g with z up (ISO 8855) and -1 g with z down.
            int sign = middle * unit.factor() < -5.0 ? -1 : 1;
            search.accept(
                    Quantity.VERTICAL_ACCELERATION,
                    candidate.column(),
                    unit,
                    search.givenEntry(Quantity.VERTICAL_ACCELERATION)
                            .map(MapEntry::sign)
                            .orElse(sign),
                    0.0,
                    Standing.SILENT,
                    Search.text("its median is %.3g %s", middle, unit));
        });
    }

    private static void plain(Search search, Quantity quantity, Unit otherwise) {
        List<Candidate> named = search.named(quantity);
        if (!named.isEmpty()) {
            int column = named.get(0).column();
            Unit unit = search.unit(column, quantity).orElse(otherwise);
            search.accept(quantity, column, unit, 1, 0.0, Standing.SILENT, "");
        }
    }
}
