package setwright.core.proposal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.Modelled;
import setwright.core.car.setup.SetupCatalogue;

/** Lists what can be turned. */
final class Turns {
    /** A turn that a driver feels: about a fifth of the range (our choice; one step of a bar with five positions). */
    private static final double CLEAR_SHARE = 0.2;

    private Turns() {}

    /** Returns every item that moves the balance and that the model knows, turned clearly each way, as its range allows. */
    static List<Turn> clear(CarSheet sheet) {
        return sheet.setup().stream()
                .filter(item -> acts(sheet, item))
                .flatMap(item -> Stream.of(1L, -1L).flatMap(way -> of(item, way * clearSteps(item)).stream()))
                .toList();
    }

    /** Returns the same item turned the same way by one, two and more steps, up to the end of its range or twice as far. */
    static List<Turn> sizes(Turn turn) {
        long most = 2 * Math.abs(turn.steps());
        return LongStream.rangeClosed(1, most)
                .filter(steps -> steps <= 6 || steps % Math.max(1, most / 8) == 0)
                .mapToObj(steps -> of(turn.item(), Long.signum(turn.steps()) * steps))
                .flatMap(List::stream)
                .toList();
    }

    /** By so many steps, or to the end of the range when that is nearer; empty at the end. */
    private static List<Turn> of(SetupItem item, long steps) {
        ItemRange range = new ItemRange(item);
        for (long left = Math.abs(steps); left > 0; left--) {
            OptionalDouble value = range.stepsAway(Long.signum(steps) * left);
            if (value.isPresent()) {
                return List.of(new Turn(item, value.getAsDouble(), Long.signum(steps) * left));
            }
        }
        return List.of();
    }

    private static long clearSteps(SetupItem item) {
        return Math.max(1, Math.round(CLEAR_SHARE * (item.max() - item.min()) / item.step()));
    }

    private static boolean acts(CarSheet sheet, SetupItem item) {
        boolean handling = SetupCatalogue.find(item.name())
                .map(kind -> switch (kind.family()) {
                    case FINAL_DRIVE, GEAR, FUEL, TYRE_COMPOUND -> false;
                    default -> true;
                })
                .orElse(false);
        return handling
                && item.max() > item.min()
                && new Modelled(sheet).obstacle(item).isEmpty();
    }
}
