package setwright.core.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupPlace;
import setwright.core.handling.Phase;

/*
 * Design note. Only rows on which handbooks agree stand here. Where a prediction disagrees with one, one of the two is wrong for this
 * car, and the user must hear of it before he turns anything.
 */

/**
 * What handbooks say a change does to the balance, and where a prediction says otherwise. Milliken and Milliken, Race Car Vehicle Dynamics
 * (SAE 1995), ch. 12, 16 to 18, 22; C. Smith, Tune to Win (1978); J. Dixon, Tires, Suspension and Handling (1996); A. Staniforth,
 * Competition Car Suspension; all values from memory, and common practice.
 */
public final class HandbookSigns {
    /** Below this share of the change's largest effect a phase is one in which it does nothing to speak of (our choice). */
    private static final double HARDLY = 0.1;

    /**
     * What handbooks say of turning an item up.
     *
     * @param phase       of a corner
     * @param understeer  whether it moves the balance toward understeer
     * @param why         why the model may say otherwise, a sentence with a leading space; empty where it should not
     */
    public record Sign(Phase phase, boolean understeer, String why) {}

    private HandbookSigns() {}

    /** Returns what handbooks say of an item turned up, a spring or bar stiffer, a wing or a height raised; empty where they are not at one. */
    public static List<Sign> up(CarSheet sheet, SetupItemKind kind) {
        boolean front = kind.place() == SetupPlace.FRONT;
        boolean air = sheet.downforce() != Downforce.NONE;
        return switch (kind.family()) {
            case BAR, SPRING -> everywhere(front, "");
            case WING -> everywhere(!front, "");
            case RIDE_HEIGHT ->
                air
                        ? everywhere(
                                front,
                                " Raising the body also raises its centre of gravity and its roll centres, and what rake does to the"
                                        + " downforce of this car is assumed.")
                        : List.of();
            case TOE ->
                front
                        ? List.of(new Sign(
                                Phase.ENTRY,
                                true,
                                " The balance is an angle here: a toed-out outer wheel needs more mean steer for the same force, and how"
                                        + " soon the inner wheel bites is not modelled."))
                        : everywhere(true, "");
            case BRAKE_BIAS_FRONT -> List.of(new Sign(Phase.ENTRY, true, ""));
            case DIFF_COAST_LOCK, DIFF_PRELOAD ->
                sheet.drivenAxle() == DrivenAxle.REAR ? List.of(new Sign(Phase.ENTRY, true, "")) : List.of();
            default -> List.of();
        };
    }

    private static List<Sign> everywhere(boolean understeer, String why) {
        return List.of(
                new Sign(Phase.ENTRY, understeer, why),
                new Sign(Phase.MID, understeer, why),
                new Sign(Phase.EXIT, understeer, why));
    }

    /**
     * Returns where a prediction is sure of a sign that handbooks have the other way round, one plain sentence each.
     *
     * @param prediction  of one item turned; with several nothing is compared
     */
    static List<String> disagreements(CarSheet sheet, Prediction prediction) {
        if (prediction.changes().size() != 1) {
            return List.of();
        }
        SetupChange change = prediction.changes().get(0);
        double most = prediction.phases().stream()
                .filter(effect -> effect.speedClass().isEmpty())
                .mapToDouble(effect -> Math.abs(effect.balance().central()))
                .max()
                .orElse(0.0);
        List<String> out = new ArrayList<>();
        for (Sign sign :
                SetupCatalogue.find(change.item()).map(kind -> up(sheet, kind)).orElse(List.of())) {
            boolean understeer = sign.understeer() == change.to() > change.from();
            prediction
                    .balance(sign.phase(), Optional.empty())
                    .filter(effect -> effect.signSure() && Math.abs(effect.central()) >= HARDLY * most)
                    .filter(effect -> effect.central() > 0.0 != understeer)
                    .ifPresent(effect -> out.add(words(change, sign, understeer, effect)));
        }
        return out;
    }

    private static String words(SetupChange change, Sign sign, boolean understeer, Effect effect) {
        return String.format(
                Locale.ROOT,
                "Handbooks say that %s turned %s moves the balance %s toward %s; on these laps the model has it the other way,"
                        + " by %.2f deg.%s The track decides.",
                change.item(),
                change.to() > change.from() ? "up" : "down",
                sign.phase().place(),
                understeer ? "understeer" : "oversteer",
                Math.toDegrees(Math.abs(effect.central())),
                sign.why());
    }
}
