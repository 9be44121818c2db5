package setwright.core.car.model.validation.signs;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import setwright.core.car.model.CarModel;

/**
 * A row of the handbook table.
 *
 * @param name      number and change
 * @param before    the car before the change
 * @param after     the car after it
 * @param applies   to which cars
 * @param tight     whether it is looked at in a tight corner
 * @param expected  by phase
 * @param reasons   why the model disagrees, by car and phase
 */
record Row(
        String name,
        Function<InventedCar, CarModel> before,
        Function<InventedCar, CarModel> after,
        Predicate<InventedCar> applies,
        boolean tight,
        Map<Phase, Sign> expected,
        Map<Where, String> reasons) {

    record Where(InventedCar car, Phase phase) {}

    /** What handbooks say. */
    enum Sign {
        UNDERSTEER,
        OVERSTEER,
        NONE,
        /** They differ, or it depends: printed, not asserted. */
        DEPENDS;

        static Sign of(char letter) {
            return switch (letter) {
                case 'U' -> UNDERSTEER;
                case 'O' -> OVERSTEER;
                case '0' -> NONE;
                default -> DEPENDS;
            };
        }
    }

    /** Makes a row with the signs of entry, mid and exit as three letters. */
    static Row of(String name, String signs, Function<InventedCar, CarModel> after) {
        Map<Phase, Sign> expected = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            expected.put(phase, Sign.of(signs.charAt(phase.ordinal())));
        }
        return new Row(name, InventedCar::car, after, car -> true, false, expected, Map.of());
    }

    Row from(Function<InventedCar, CarModel> other) {
        return new Row(name, other, after, applies, tight, expected, reasons);
    }

    Row only(Predicate<InventedCar> cars) {
        return new Row(name, before, after, cars, tight, expected, reasons);
    }

    Row inATightCorner() {
        return new Row(name, before, after, applies, true, expected, reasons);
    }

    /** States why the model disagrees on a car in a phase. */
    Row but(InventedCar car, Phase phase, String reason) {
        Map<Where, String> more = new HashMap<>(reasons);
        more.put(new Where(car, phase), reason);
        return new Row(name, before, after, applies, tight, expected, more);
    }

    /** States why the model disagrees on every car to which the row applies. */
    Row but(Phase phase, String reason) {
        Row row = this;
        for (InventedCar car : InventedCar.values()) {
            row = applies.test(car) ? row.but(car, phase, reason) : row;
        }
        return row;
    }

    Optional<String> reason(InventedCar car, Phase phase) {
        return Optional.ofNullable(reasons.get(new Where(car, phase)));
    }

    @Override
    public String toString() {
        return name;
    }
}
