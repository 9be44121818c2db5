package setwright.app.truthbench;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;
import setwright.core.simulation.truth.TrueTrigger;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;

/** What the program would have the driver do otherwise with his feet. */
final class LeverAnswer {
    private LeverAnswer() {}

    /** Returns the inputs of which it asks for less or for later ones, whether his laps prove it or not. */
    static Set<TrueTrigger> against(Diagnosis diagnosis, CarSheet sheet) {
        return TechniqueFinder.find(diagnosis, sheet.drivenAxle()).stream()
                .flatMap(lever -> against(lever).stream())
                .collect(Collectors.toSet());
    }

    private static Optional<TrueTrigger> against(TechniqueLever lever) {
        boolean less = lever.move() < 0.0;
        boolean more = lever.move() > 0.0;
        return switch (lever.lever()) {
            case BRAKE_AT_TURN_IN, OVERLAP -> less ? Optional.of(TrueTrigger.TRAIL_BRAKE) : Optional.empty();
            case PICK_UP -> more ? Optional.of(TrueTrigger.THROTTLE) : Optional.empty(); // later
            case OPENING -> less ? Optional.of(TrueTrigger.THROTTLE) : Optional.empty();
            case RELEASE_RATE, ENTRY_SPEED -> Optional.empty();
        };
    }
}
