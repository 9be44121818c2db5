package setwright.core.simulation.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;

/**
 * Something wrong with a setup: how it is made, and where it is meant to show. Meant only: what it really does to a car is to
 * be measured.
 *
 * @param name     in words, such as {@code front bar too stiff}
 * @param phase    of a corner in which it is meant to show most
 * @param speed    corners in which it is meant to show most
 * @param balance  which axle is meant to give up
 * @param trigger  input that is meant to set it off
 * @param needs    cars that can have it
 * @param moves    what is turned, away from the balanced sheet
 */
public record Fault(
        String name,
        Phase phase,
        SpeedRange speed,
        BalanceSign balance,
        Trigger trigger,
        Needs needs,
        List<Move> moves) {

    /** Fewer steps than that are a change nobody would call a fault. */
    private static final int FEWEST_STEPS = 2;

    private static final double ROUNDING = 1.0e-9;

    public Fault {
        moves = List.copyOf(moves);
    }

    /**
     * One item turned.
     *
     * @param item   name on the sheet
     * @param share  of the item's whole range at size 1, positive upward, -1..1
     */
    public record Move(String item, double share) {}

    /**
     * Cars that can have a fault.
     *
     * @param drives     driven axles
     * @param downforce  whether it acts through downforce
     */
    public record Needs(Set<DrivenAxle> drives, boolean downforce) {
        /** Any car. */
        public static final Needs NOTHING = new Needs(Set.of(DrivenAxle.values()), false);

        /** A car with downforce. */
        public static final Needs DOWNFORCE = new Needs(Set.of(DrivenAxle.values()), true);

        public Needs {
            drives = Set.copyOf(drives);
        }

        /** A car driven at that axle. */
        public static Needs drive(DrivenAxle axle) {
            return new Needs(Set.of(axle), false);
        }
    }

    /** Tells whether the car can have it: its layout, and each item with room for two steps or more at size 1. */
    public boolean appliesTo(CarSheet sheet) {
        return needs.drives().contains(sheet.drivenAxle())
                && (!needs.downforce() || sheet.downforce() != Downforce.NONE)
                && moves.stream().allMatch(move -> change(sheet, move, 1.0).isPresent());
    }

    /**
     * Returns what is to be changed on a balanced sheet.
     *
     * @param sheet  balanced
     * @param size   1 for a usual size; larger moves further, as far as the ranges allow; &gt; 0
     * @return one change for each move that has room for at least two steps; none when size is too small for any
     */
    public List<SetupChange> changes(CarSheet sheet, double size) {
        if (!(size > 0.0)) {
            throw new IllegalArgumentException("the size of a fault must be above 0, got " + size);
        }
        List<SetupChange> changes = new ArrayList<>();
        moves.forEach(move -> change(sheet, move, size).ifPresent(changes::add));
        return changes;
    }

    private static Optional<SetupChange> change(CarSheet sheet, Move move, double size) {
        return sheet.item(move.item()).flatMap(item -> {
            double wanted = Math.abs(move.share()) * size * (item.max() - item.min());
            double room = move.share() > 0.0 ? item.max() - item.value() : item.value() - item.min();
            double steps = Math.min(Math.rint(wanted / item.step()), Math.floor(room / item.step() + ROUNDING));
            return steps < FEWEST_STEPS
                    ? Optional.empty()
                    : Optional.of(new SetupChange(item.name(), item.value(), moved(item, move, steps)));
        });
    }

    /** The value on the sheet after so many steps, without the last digits that adding leaves. */
    private static double moved(SetupItem item, Move move, double steps) {
        double value = item.value() + Math.copySign(steps * item.step(), move.share());
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(9))
                .doubleValue();
    }
}
