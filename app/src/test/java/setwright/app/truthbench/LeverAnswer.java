package setwright.app.truthbench;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
        return against(TechniqueFinder.find(diagnosis, sheet.drivenAxle()));
    }

    static Set<TrueTrigger> against(List<TechniqueLever> levers) {
        Set<TrueTrigger> against = EnumSet.noneOf(TrueTrigger.class);
        for (TechniqueLever lever : levers) {
            switch (lever.lever()) {
                case BRAKE_AT_TURN_IN, OVERLAP -> {
                    if (lever.move() < 0.0) {
                        against.add(TrueTrigger.TRAIL_BRAKE);
                    }
                }
                case PICK_UP -> {
                    if (lever.move() > 0.0) {
                        against.add(TrueTrigger.THROTTLE);
                    }
                }
                case OPENING -> {
                    if (lever.move() < 0.0) {
                        against.add(TrueTrigger.THROTTLE);
                    }
                }
                case RELEASE_RATE, ENTRY_SPEED -> {}
            }
        }
        return against;
    }
}
