package setwright.app.story;

import java.util.Set;
import setwright.app.units.Figures;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.proposal.Turn;

/** Which way an item is turned, in the words of those who turn it, beside its name on the sheet. */
public final class TurnWords {
    /** Units that only count: "6 step" reads badly. */
    private static final Set<String> COUNTED = Set.of("step", "click", "position");

    private TurnWords() {}

    /** Returns {@code front_bar 5 to 3 (softer)}. */
    public static String brief(Turn turn) {
        return values(turn) + " (" + way(turn) + ")";
    }

    /** Returns the same with its unit: {@code front_spring 120 to 110 N/mm (softer)}. */
    public static String inFull(Turn turn) {
        String unit = turn.item().unit();
        return values(turn) + (unit.isEmpty() || COUNTED.contains(unit) ? "" : Figures.KEPT_TOGETHER + unit) + " ("
                + way(turn) + ")";
    }

    /** Returns {@code front_bar 5 to 3}. */
    public static String values(Turn turn) {
        SetupItem item = turn.item();
        return item.name() + " " + ItemRange.plain(item.value()) + " to " + ItemRange.plain(turn.to());
    }

    /** Returns what a turn does to the part, such as {@code softer}. */
    public static String way(Turn turn) {
        boolean up = turn.to() > turn.item().value();
        return SetupCatalogue.find(turn.item().name())
                .map(kind -> way(kind.family(), up))
                .orElse(up ? "up" : "down");
    }

    private static String way(SetupFamily family, boolean up) {
        return switch (family) {
            case SPRING, BAR, BUMP, REBOUND, BUMP_LOW, BUMP_HIGH, REBOUND_LOW, REBOUND_HIGH ->
                up ? "stiffer" : "softer";
            case BUMP_STOP_GAP -> up ? "wider" : "narrower";
            case RIDE_HEIGHT -> up ? "up" : "down";
            case WING -> up ? "more downforce" : "less downforce";
            case TYRE_PRESSURE, FUEL, BALLAST -> up ? "more" : "less";
            case CAMBER -> up ? "less negative" : "more negative";
            case TOE -> up ? "toward toe-in" : "toward toe-out";
            case TYRE_COMPOUND -> up ? "up" : "down";
            case BRAKE_BIAS_FRONT -> up ? "more to the front" : "more to the rear";
            case DIFF_PRELOAD, DIFF_POWER_LOCK, DIFF_COAST_LOCK -> up ? "more locking" : "less locking";
            case FINAL_DRIVE, GEAR -> up ? "shorter" : "longer";
            case BALLAST_POSITION -> up ? "rearward" : "forward";
        };
    }
}
