package setwright.core.standing;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupDifference;
import setwright.core.car.setup.SetupFamily;
import setwright.core.handling.Phase;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;
import setwright.core.replay.Predictor;

/*
 * Design note. The balance angle alone cannot tell a car that pushes from one whose front tyres are simply softer: what a healthy car
 * of this kind would show is known to half a degree at best. But the sheet says what was done to this car. Whoever lays out
 * the range of an adjustment puts what is usual near its middle (common practice), so that an item near an end of its range
 * was put there on purpose or by mistake, and the replay says what that does on these laps. How likely an item is out of the ordinary
 * follows from where it stands (RangeLayout), and what it does counts with that probability. Where a sheet's items stand anywhere in
 * their ranges, no middle is the usual one, and the ranges say nothing.
 * Ordinary settings say nothing: whoever made the car drivable chose them together, so that what one does another takes back.
 *
 * Against a baseline nothing has to be guessed: what stands elsewhere than in a stint in which the car was in good order was changed
 * since, and what stands where it stood did not make the difference, wherever that is in its range.
 */

/** Where a setup stands in its ranges, and what that does to the balance. */
public final class SetupStanding {
    /** What moves the balance by less is not worth a word: below what is worth a change by far. */
    private static final double LEAST_RAD = Math.toRadians(0.05);

    /** An item nearer to the middle is turned by this share of its range to see what it does. */
    private static final double LEAST_TURN = 0.1;

    private static final int DRAWS = 40;
    /** What an item does that is ordinary all but certainly hardly counts, and need not be known as well. */
    private static final int FEW_DRAWS = 10;

    private static final double HARDLY_COUNTS = 0.1;

    private final Yard yard;
    private final List<ItemStanding> items;
    private final List<SetupDifference> changed;

    /** What a setup is held against. */
    public enum Yard {
        /** Nothing: the sheet gives no ranges. */
        NONE,
        /** Nothing: the items stand anywhere in their ranges, so that no middle is the usual one. */
        SCATTERED,
        /** What is usual in the ranges of the items. */
        RANGES,
        /** The setup of a stint in which the car was in good order. */
        BASELINE
    }

    private SetupStanding(Yard yard, List<ItemStanding> items, List<SetupDifference> changed) {
        this.yard = yard;
        this.items = List.copyOf(items);
        this.changed = List.copyOf(changed);
    }

    /** Returns the standing of a setup of which nothing is known. */
    public static SetupStanding unknown() {
        return new SetupStanding(Yard.NONE, List.of(), List.of());
    }

    /** Returns the standing of a setup whose laps were not replayed. */
    public static SetupStanding unknown(CarSheet sheet) {
        return new SetupStanding(layout(sheet).tells() ? Yard.NONE : Yard.SCATTERED, List.of(), List.of());
    }

    /**
     * Looks at a setup.
     *
     * @param sheet      as driven; items whose range the user did not give say nothing
     * @param predictor  of its laps
     */
    public static SetupStanding of(CarSheet sheet, Predictor predictor) {
        if (!canBeKnown(sheet)) {
            return unknown(sheet);
        }
        RangeLayout layout = layout(sheet);
        List<Held> held = telling(sheet)
                .map(item -> new Held(item, item.middle(), layout.unusual(item.place()), turn(item)))
                .toList();
        return new SetupStanding(Yard.RANGES, replayed(held, predictor), List.of());
    }

    /**
     * Holds a setup against that of a stint in which the car was in good order.
     *
     * @param sheet      as driven
     * @param good       as driven then
     * @param predictor  of the laps driven with {@code sheet}; empty where none could be replayed
     */
    public static SetupStanding against(CarSheet good, CarSheet sheet, Optional<Predictor> predictor) {
        List<Held> held = sheet.setup().stream()
                .filter(SetupStanding::handles)
                .flatMap(item -> good
                        .item(item.name())
                        .filter(then -> then.value() != item.value())
                        .map(then -> new Held(
                                item, then.value(), 1.0, new SetupChange(item.name(), item.value(), then.value())))
                        .stream())
                .toList();
        return new SetupStanding(
                Yard.BASELINE,
                predictor.map(known -> replayed(held, known)).orElse(List.of()),
                SetupDifference.between(good, sheet));
    }

    /** An item, what it is held against, how likely it is out of the ordinary, and the turn that shows what it does. */
    private record Held(SetupItem item, double usual, double unusual, SetupChange turn) {
        ItemStanding standing(Prediction effect) {
            return new ItemStanding(
                    item, usual, unusual, (turn.to() - item.value()) / (item.max() - item.min()), effect);
        }
    }

    private static List<ItemStanding> replayed(List<Held> held, Predictor predictor) {
        Map<Boolean, List<Held>> counting =
                held.stream().collect(Collectors.partitioningBy(one -> one.unusual() >= HARDLY_COUNTS));
        Map<Held, ItemStanding> found = new HashMap<>();
        counting.forEach((counts, some) -> replay(some, predictor, counts ? DRAWS : FEW_DRAWS, found));
        return held.stream().map(found::get).toList();
    }

    private static void replay(List<Held> held, Predictor predictor, int draws, Map<Held, ItemStanding> found) {
        if (held.isEmpty()) {
            return; // cars would be drawn and driven for nothing
        }
        List<Prediction> effects =
                predictor.predict(held.stream().map(one -> List.of(one.turn())).toList(), draws);
        for (int i = 0; i < held.size(); i++) {
            found.put(held.get(i), held.get(i).standing(effects.get(i)));
        }
    }

    /** Tells whether a sheet gives ranges of items that move the balance, laid out so that their middles mean something. */
    public static boolean canBeKnown(CarSheet sheet) {
        return telling(sheet).findAny().isPresent() && layout(sheet).tells();
    }

    private static Stream<SetupItem> telling(CarSheet sheet) {
        return sheet.setup().stream().filter(item -> tells(sheet, item));
    }

    private static RangeLayout layout(CarSheet sheet) {
        return RangeLayout.of(telling(sheet).mapToDouble(SetupItem::place).toArray());
    }

    private static boolean tells(CarSheet sheet, SetupItem item) {
        String lacks = "setup." + item.name() + " lacks ";
        boolean given = sheet.assumed().stream()
                .filter(sentence -> sentence.startsWith(lacks))
                .map(sentence -> sentence.substring(lacks.length(), Math.max(lacks.length(), sentence.indexOf(':'))))
                .noneMatch(missing -> missing.contains("min") || missing.contains("max"));
        return given && handles(item);
    }

    /** Tells whether an item moves the balance and can be turned. */
    private static boolean handles(SetupItem item) {
        return item.max() > item.min()
                && SetupCatalogue.find(item.name())
                        .map(kind -> switch (kind.family()) {
                            case FINAL_DRIVE, GEAR, FUEL, BALLAST, BALLAST_POSITION, TYRE_COMPOUND -> false;
                            default -> true;
                        })
                        .orElse(false);
    }

    /** To the middle, or a little toward it and past it where it stands near. */
    private static SetupChange turn(SetupItem item) {
        double place = item.place();
        double turned = Math.abs(place) >= LEAST_TURN ? -place : place > 0.0 ? -LEAST_TURN : LEAST_TURN;
        return new SetupChange(item.name(), item.value(), item.value() + turned * (item.max() - item.min()));
    }

    /** Tells whether there was nothing to hold the setup against. */
    public boolean isUnknown() {
        return yard == Yard.NONE || yard == Yard.SCATTERED;
    }

    /** Returns what the setup is held against. */
    public Yard yard() {
        return yard;
    }

    /** Returns all that was changed since the baseline, by name, whether the replay can tell what it does or not. */
    public List<SetupDifference> changed() {
        return changed;
    }

    /** Returns what was changed since the baseline and may move the balance, without anything known of how. */
    public List<SetupDifference> untold() {
        return changed.stream()
                .filter(change ->
                        items.stream().noneMatch(item -> item.item().name().equals(change.item())))
                .filter(change -> SetupCatalogue.find(change.item())
                        .map(kind -> kind.family() != SetupFamily.GEAR && kind.family() != SetupFamily.FINAL_DRIVE)
                        .orElse(true))
                .toList();
    }

    /** Returns all items that tell something. */
    public List<ItemStanding> items() {
        return items;
    }

    /** Returns the items that are more likely than not out of the ordinary, the one that moves a pool's balance most first. */
    public List<ItemStanding> unusual(Pool pool) {
        return items.stream()
                .filter(item -> item.unusual() > 0.5)
                .sorted(Comparator.comparingDouble((ItemStanding item) -> Math.abs(item.balanceRad(pool)))
                        .reversed())
                .toList();
    }

    /**
     * Returns of {@link #unusual} the items that push a pool's balance one way, by what is worth a word.
     *
     * @param direction  1 for understeer, -1 for oversteer
     */
    public List<ItemStanding> pushing(Pool pool, double direction) {
        return unusual(pool).stream()
                .filter(item -> direction * item.balanceRad(pool) >= LEAST_RAD)
                .toList();
    }

    /** Returns how much more the front slips than with every item as is usual, rad, expected. */
    public double balanceRad(Pool pool) {
        return items.stream()
                .mapToDouble(item -> item.unusual() * item.balanceRad(pool))
                .sum();
    }

    /** Returns the same for one corner, rad. */
    public double balanceRad(int corner, Phase phase) {
        return items.stream()
                .mapToDouble(item -> item.unusual() * item.balanceRad(corner, phase))
                .sum();
    }

    /**
     * Returns what some items cost a lap against what is usual, each counted with the probability that it is out of
     * the ordinary.
     *
     * @param wanted  which
     */
    public TimeCost cost(Predicate<ItemStanding> wanted) {
        double mean = 0.0;
        double square = 0.0;
        for (ItemStanding item : items) {
            if (wanted.test(item)) {
                double spread = item.unusual() * item.costSpreadS();
                mean += item.unusual() * item.costS();
                square += spread * spread + item.unusual() * (1.0 - item.unusual()) * item.costS() * item.costS();
            }
        }
        return new TimeCost(mean, Math.sqrt(square));
    }

    /** Returns the covariance of {@link #balanceRad} of two pools, rad². */
    public double covarianceRad2(Pool one, Pool other) {
        double sum = 0.0;
        for (ItemStanding item : items) {
            double mixed = item.unusual() * (1.0 - item.unusual()) * item.place() * item.place();
            sum += item.perRange(one) * item.perRange(other) * mixed;
            if (one.equals(other)) {
                double spread = item.unusual() * item.spreadRad(one);
                sum += spread * spread;
            }
        }
        return sum;
    }
}
