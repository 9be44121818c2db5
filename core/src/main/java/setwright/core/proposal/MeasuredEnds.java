package setwright.core.proposal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.advice.Advice;
import setwright.core.advice.BrakeAdvice;
import setwright.core.advice.TravelAdvice;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupPlace;
import setwright.core.proposal.Refusal.Figure;
import setwright.core.proposal.Refusal.Kind;

/*
 * Design note. What wheels and travel showed goes before what a model says of them: a turn that leads further into a lock or an end of
 * travel that was measured is refused. Only items that act on it straight away are looked at; a bar does nothing when both wheels move.
 */

/** Ends that were met on these laps: axles that lock or run out of travel. */
final class MeasuredEnds {
    private final List<Advice> measured;

    /**
     * Makes them.
     *
     * @param measured  what evidence other than balance says; all but locks and travel is passed over
     */
    MeasuredEnds(List<Advice> measured) {
        this.measured = List.copyOf(measured);
    }

    /** Returns why items are not to be turned so, with the laps that show it. */
    List<Refusal> against(CarSheet sheet, CarSheet changed) {
        return sheet.setup().stream()
                .flatMap(item -> changed
                        .item(item.name())
                        .filter(other -> other.value() != item.value())
                        .flatMap(other -> against(item, other.value() > item.value()))
                        .stream())
                .toList();
    }

    private Optional<Refusal> against(SetupItem item, boolean up) {
        return SetupCatalogue.find(item.name())
                .flatMap(kind -> measured.stream()
                        .flatMap(found -> against(kind, up, found).stream())
                        .findFirst());
    }

    private static Optional<Refusal> against(SetupItemKind kind, boolean up, Advice found) {
        if (found instanceof BrakeAdvice brake) {
            return switch (kind.family()) {
                case BRAKE_BIAS_FRONT -> up == brake.front() ? Optional.of(locks(brake)) : Optional.empty();
                default -> Optional.empty();
            };
        }
        if (found instanceof TravelAdvice travel && kind.place() == place(travel.front())) {
            return leadsFurther(kind, up, travel) ? Optional.of(meets(travel)) : Optional.empty();
        }
        return Optional.empty();
    }

    /** Softer, lower and more pressed down all use more of the travel; a gap that is smaller ends it sooner, a wider one at the ground. */
    private static boolean leadsFurther(SetupItemKind kind, boolean up, TravelAdvice travel) {
        return switch (kind.family()) {
            case SPRING, RIDE_HEIGHT -> !up;
            case WING -> up;
            case BUMP_STOP_GAP -> up == (travel.end() == TravelAdvice.End.GROUND);
            default -> false;
        };
    }

    private static SetupPlace place(boolean front) {
        return front ? SetupPlace.FRONT : SetupPlace.REAR;
    }

    private static Refusal locks(BrakeAdvice brake) {
        return Refusal.of(
                Kind.LOCKS,
                Refusal.text(
                        "the %s wheels lock already, %d times against %d at the other axle (%s)",
                        place(brake.front()).words(), brake.locks(), brake.others(), laps(brake)),
                new Figure("locks", brake.locks()),
                new Figure("locks_other_axle", brake.others()));
    }

    private static Refusal meets(TravelAdvice travel) {
        String what = switch (travel.end()) {
            case GROUND -> "touches the ground";
            case BUMP_STOP -> "runs on its bump stops";
            case UNKNOWN_STOP -> "runs against a stop";
        };
        return Refusal.of(
                Kind.TRAVEL,
                Refusal.text(
                        "the %s %s already, %.2f s a lap by its measured travel (%s)",
                        place(travel.front()).words(), what, travel.secondsLap(), laps(travel)),
                new Figure("s_per_lap", travel.secondsLap()));
    }

    private static String laps(Advice found) {
        return (found.laps().size() == 1 ? "lap " : "laps ")
                + found.laps().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
