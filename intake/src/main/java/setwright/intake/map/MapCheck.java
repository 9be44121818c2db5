package setwright.intake.map;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Found;
import setwright.intake.map.Search.Standing;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;
import setwright.intake.yaml.Spelling;

/**
 * Puts a user's map to the test of physics. The same search runs on the user's columns without believing units and signs; where
 * the data say something else for certain, the map is refused with the figures. What the data cannot tell is left to the user.
 */
final class MapCheck {
    private static final Set<Quantity> LATERAL = EnumSet.of(
            Quantity.YAW_RATE, Quantity.LATERAL_ACCELERATION, Quantity.STEERING_WHEEL_ANGLE, Quantity.ROAD_WHEEL_ANGLE);
    /** Quantities that physics can confirm or refute. */
    private static final Set<Quantity> TESTED = EnumSet.of(
            Quantity.SPEED,
            Quantity.LONGITUDINAL_ACCELERATION,
            Quantity.YAW_RATE,
            Quantity.LATERAL_ACCELERATION,
            Quantity.STEERING_WHEEL_ANGLE,
            Quantity.ROAD_WHEEL_ANGLE,
            Quantity.LAP_DISTANCE,
            Quantity.THROTTLE,
            Quantity.BRAKE,
            Quantity.WHEEL_SPEED_FRONT_LEFT,
            Quantity.WHEEL_SPEED_FRONT_RIGHT,
            Quantity.WHEEL_SPEED_REAR_LEFT,
            Quantity.WHEEL_SPEED_REAR_RIGHT);

    private final Table table;
    private final ChannelMap map;
    private final Search tested;
    private final Search free;

    private MapCheck(Table table, ChannelMap map, Optional<CarSheet> car) {
        this.table = table;
        this.map = map;
        this.tested = MapProposer.search(table, car, Optional.of(map));
        this.free = MapProposer.search(table, car, Optional.empty());
    }

    static Proposal check(Table table, ChannelMap map, Optional<CarSheet> car) {
        refuseUnknownColumns(table, map);
        MapCheck check = new MapCheck(table, map, car);
        List<String> remarks = new ArrayList<>(table.remarks());
        map.entries().forEach(check::refuseSwapped);
        for (Quantity quantity : map.entries().keySet()) {
            if (TESTED.contains(quantity)) {
                check.test(quantity, Search.at(map.entries(), quantity)).ifPresent(remarks::add);
            }
        }
        map.entries().forEach(check::refuseLost);
        check.testTurning();
        return check.conclude(remarks);
    }

    private static void refuseUnknownColumns(Table table, ChannelMap map) {
        List<String> headers = table.columns().stream().map(TableColumn::header).toList();
        for (Map.Entry<Quantity, MapEntry> item : map.entries().entrySet()) {
            String column = item.getValue().column();
            if (!headers.contains(column)) {
                throw InputProblem.in(table.file())
                        .column(column)
                        .expected("a column of that name, which the channel map takes for the "
                                + item.getKey().words())
                        .found("none")
                        .advice(Spelling.nearest(column, headers)
                                .map(word -> "Did you mean '" + word + "'?")
                                .orElse("The columns are: " + String.join(", ", headers) + "."))
                        .problem();
            }
        }
    }

    private InputProblem.Builder problem(Quantity quantity, MapEntry entry) {
        return InputProblem.in(table.file())
                .column(entry.column())
                .expected("what the channel map says: " + quantity.words() + " in " + entry.unit() + ", sign "
                        + entry.sign());
    }

    /** Tests one entry; returns a remark when nothing could be told. */
    private Optional<String> test(Quantity quantity, MapEntry entry) {
        Optional<Found> found = tested.get(quantity).filter(f -> f.standing() == Standing.CONFIRMED);
        if (found.isEmpty()) {
            refuseWhereAnotherFits(quantity, entry);
            return Optional.of("The data could not confirm that '" + entry.column() + "' is the " + quantity.words()
                    + "; the channel map is believed.");
        }
        Unit unit = found.get().entry().unit();
        if (!unit.equals(entry.unit())) {
            throw problem(quantity, entry)
                    .found(Search.text(
                            "data in %s: %s; read in %s it would be %.4g times that",
                            unit,
                            found.get().physics(),
                            entry.unit(),
                            entry.unit().factor() / unit.factor()))
                    .advice("Set its unit to " + unit + ".")
                    .problem();
        }
        boolean signTold = !LATERAL.contains(quantity) || tested.courseRate.isPresent();
        if (signTold && found.get().entry().sign() != entry.sign()) {
            throw problem(quantity, entry)
                    .found("data that run the other way: " + found.get().physics())
                    .advice("Set its sign to " + found.get().entry().sign() + ".")
                    .problem();
        }
        return Optional.empty();
    }

    /** Two columns that each do what the map says of another. */
    private void refuseSwapped(Quantity quantity, MapEntry entry) {
        Optional<Found> right = free.get(quantity)
                .filter(f -> f.standing() == Standing.CONFIRMED
                        && !f.entry().column().equals(entry.column()));
        boolean isAnother = free.found.entrySet().stream()
                .filter(item -> item.getKey() != quantity && TESTED.contains(item.getKey()))
                .filter(item -> item.getValue().standing() == Standing.CONFIRMED)
                .anyMatch(item -> item.getValue().entry().column().equals(entry.column()));
        if (TESTED.contains(quantity) && right.isPresent() && isAnother) {
            throw otherFits(quantity, entry, right.get());
        }
    }

    private InputProblem otherFits(Quantity quantity, MapEntry entry, Found other) {
        return problem(quantity, entry)
                .found("data that do not behave like it, while '"
                        + other.entry().column() + "' does: " + other.physics())
                .advice("Are two columns of the map swapped?")
                .problem();
    }

    private void refuseWhereAnotherFits(Quantity quantity, MapEntry entry) {
        Optional<Found> other = free.get(quantity)
                .filter(f -> f.standing() == Standing.CONFIRMED
                        && !f.entry().column().equals(entry.column()));
        if (other.isPresent()) {
            throw otherFits(quantity, entry, other.get());
        }
        Optional<Map.Entry<Quantity, Found>> instead = free.found.entrySet().stream()
                .filter(item -> item.getKey() != quantity && TESTED.contains(item.getKey()))
                .filter(item -> item.getValue().standing() == Standing.CONFIRMED)
                .filter(item -> item.getValue().entry().column().equals(entry.column()))
                .findFirst();
        if (instead.isPresent()) {
            throw problem(quantity, entry)
                    .found("data that behave like " + instead.get().getKey().words() + ": "
                            + instead.get().getValue().physics())
                    .advice("Correct the map.")
                    .problem();
        }
    }

    /** A channel of the car's motion that follows nothing at all is not what the map says. */
    private void refuseLost(Quantity quantity, MapEntry entry) {
        boolean motion = LATERAL.contains(quantity) || quantity == Quantity.LONGITUDINAL_ACCELERATION;
        if (motion && tested.get(quantity).isEmpty()) {
            throw problem(quantity, entry)
                    .found("data that follow neither the path nor the other columns of the map")
                    .advice("Take it out of the map, or name the right column.")
                    .problem();
        }
    }

    /** Without a position only the signs against each other can be tested. */
    private void testTurning() {
        if (tested.courseRate.isPresent()) {
            return;
        }
        Optional<Quantity> first = Optional.empty();
        int turned = 1;
        for (Quantity quantity : LATERAL) {
            Optional<Found> found = tested.get(quantity).filter(f -> f.standing() == Standing.CONFIRMED);
            Optional<MapEntry> entry = map.entry(quantity);
            if (found.isEmpty() || entry.isEmpty()) {
                continue;
            }
            int product = found.get().entry().sign() * entry.get().sign();
            if (first.isEmpty()) {
                first = Optional.of(quantity);
                turned = product;
            } else if (product != turned) {
                throw problem(quantity, entry.get())
                        .found("data that run against the " + first.get().words() + " of the map: "
                                + found.get().physics())
                        .advice("Turn the sign of one of the two.")
                        .problem();
            }
        }
    }

    private Proposal conclude(List<String> remarks) {
        List<Proposal.Reason> reasons = new ArrayList<>();
        for (Map.Entry<Quantity, MapEntry> item : map.entries().entrySet()) {
            Optional<Found> found = tested.get(item.getKey());
            boolean confirmed = found.isPresent() && found.get().standing() == Standing.CONFIRMED;
            reasons.add(new Proposal.Reason(
                    item.getKey(),
                    item.getValue(),
                    confirmed ? 1.0 : 0.9,
                    "the channel map says so",
                    found.map(Found::physics).orElse("")));
        }
        return new Proposal(map, reasons, remarks);
    }
}
