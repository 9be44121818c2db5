package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Unit;
import setwright.intake.map.Units;

/** Columns mapped rightly: quantity, unit and, where the quantity has a direction, sign. */
final class ChannelRule implements Rule {
    @Override
    public List<Row> judge(StintRun run) {
        List<Truth.Column> columns = run.practice().truth().recording().columns();
        Optional<ChannelMap> map = run.intake().map(intake -> intake.proposal().map());
        int right = 0;
        List<String> misses = new ArrayList<>();
        for (Truth.Column column : columns) {
            String fault = map.map(found -> fault(column, found)).orElse("not read");
            if (fault.isEmpty()) {
                right++;
            } else {
                misses.add(column.header() + ": " + fault);
            }
        }
        String answer =
                map.map(found -> found.entries().size() + " columns used").orElse("none");
        if (!misses.isEmpty() && map.isPresent()) {
            answer += "; " + String.join("; ", misses);
        }
        return List.of(Row.counted(
                "channels", columns.size() + " columns", answer, Measure.CHANNELS, new Count(right, columns.size())));
    }

    private static String fault(Truth.Column column, ChannelMap map) {
        Optional<Quantity> quantity = TruthTerms.quantity(column.quantity());
        if (quantity.isEmpty()) {
            return "the scoreboard does not know '" + column.quantity() + "'";
        }
        Optional<MapEntry> entry = map.entry(quantity.get());
        if (entry.isEmpty() || !entry.get().column().equals(column.header())) {
            return takenFor(column.header(), map);
        }
        if (!sameUnit(column.unit(), quantity.get(), entry.get().unit())) {
            return "in " + entry.get().unit() + ", not " + column.unit();
        }
        if (column.positive() != null && entry.get().sign() != column.sign()) {
            return "wrong direction";
        }
        return "";
    }

    private static String takenFor(String header, ChannelMap map) {
        return map.entries().entrySet().stream()
                .filter(other -> other.getValue().column().equals(header))
                .findFirst()
                .map(other -> "taken for " + other.getKey().words())
                .orElse("not used");
    }

    /** A column without a unit is a plain number. */
    private static boolean sameUnit(String written, Quantity quantity, Unit unit) {
        if (written.isEmpty()) {
            return unit.dimension() == Dimension.of(quantity);
        }
        return Units.spelled(written).stream()
                .anyMatch(real -> real.dimension() == unit.dimension()
                        && Math.abs(real.factor() / unit.factor() - 1.0) < 1.0e-6
                        && real.zero() == unit.zero());
    }
}
