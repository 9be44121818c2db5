package setwright.core.car.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;

/** Every adjustable item that Setwright knows, by the name on the sheet. */
public final class SetupCatalogue {
    /** Names that begin so are kept but not modelled. */
    public static final String NOT_MODELLED = "other_";

    /** More gears than any racing gearbox has. */
    public static final int MOST_GEARS = 8;

    private static final Map<String, SetupItemKind> BY_NAME = new LinkedHashMap<>();

    static {
        for (SetupFamily family : SetupFamily.values()) {
            kinds(family).forEach(kind -> BY_NAME.put(kind.name(), kind));
        }
    }

    private SetupCatalogue() {}

    private static List<SetupItemKind> kinds(SetupFamily family) {
        List<SetupItemKind> kinds = new ArrayList<>();
        switch (family.count()) {
            case PER_AXLE ->
                List.of(SetupPlace.FRONT, SetupPlace.REAR)
                        .forEach(place -> kinds.add(kind(place.words() + "_" + family.word(), place, family, 0)));
            case PER_GEAR -> {
                for (int gear = 1; gear <= MOST_GEARS; gear++) {
                    kinds.add(kind(family.word() + "_" + gear, SetupPlace.DRIVEN, family, gear));
                }
            }
            case PER_CAR -> kinds.add(kind(family.word(), place(family), family, 0));
        }
        return kinds;
    }

    private static SetupPlace place(SetupFamily family) {
        return switch (family) {
            case DIFF_PRELOAD, DIFF_POWER_LOCK, DIFF_COAST_LOCK, FINAL_DRIVE -> SetupPlace.DRIVEN;
            default -> SetupPlace.BOTH;
        };
    }

    private static SetupItemKind kind(String name, SetupPlace place, SetupFamily family, int gear) {
        return new SetupItemKind(name, name.replace('_', ' '), place, family, gear);
    }

    /** Returns all items, in the order that a sheet lists them. */
    public static List<SetupItemKind> all() {
        return List.copyOf(BY_NAME.values());
    }

    /** Returns all names. */
    public static List<String> names() {
        return List.copyOf(BY_NAME.keySet());
    }

    /** Returns the item of that name. */
    public static Optional<SetupItemKind> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /**
     * Returns the item of one axle.
     *
     * @throws IllegalArgumentException when the family has none per axle
     */
    public static SetupItemKind of(SetupFamily family, SetupPlace axle) {
        return get(axle.words() + "_" + family.word());
    }

    /**
     * Returns the item of which a car has one.
     *
     * @throws IllegalArgumentException when the family has several
     */
    public static SetupItemKind of(SetupFamily family) {
        return get(family.word());
    }

    /** Returns the value of an item on a sheet, as {@link SetupItemKind#toSi(SetupItem)}. */
    public static OptionalDouble valueSi(CarSheet sheet, SetupItemKind kind) {
        return sheet.item(kind.name()).stream().mapToDouble(kind::toSi).findFirst();
    }

    private static SetupItemKind get(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException("there is no setup item " + name));
    }
}
