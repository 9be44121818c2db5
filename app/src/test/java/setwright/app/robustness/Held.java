package setwright.app.robustness;

import java.util.Optional;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.simulation.truth.TrueProblem;

/** How an answer stands to what is true. */
enum Held {
    /** The car's problem with its balance and phase; or nothing, where nothing is wrong. */
    RIGHT("right"),
    /** Its balance, in a phase where it is small. */
    OTHER_PHASE("balance right, phase not"),
    NOT_ENOUGH("not enough evidence"),
    /** Nothing was found, or the driver was named, where the car has a fault. */
    MISSED("missed"),
    /** The other axle was named, or a car without a fault was to be changed. */
    WRONG("wrong");

    private final String words;

    Held(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /**
     * Judges an answer.
     *
     * @param truth  what the fault does; empty without one
     */
    static Held of(Diagnosis diagnosis, Optional<TrueProblem> truth) {
        Optional<Finding> car = diagnosis.findings().stream()
                .filter(finding -> finding.lapWide() && finding.cause() == Finding.Cause.CAR)
                .findFirst();
        if (truth.isEmpty()) {
            return switch (diagnosis.verdict()) {
                case CHANGE_THE_CAR -> WRONG;
                case NOT_ENOUGH_EVIDENCE -> NOT_ENOUGH;
                case COACH_THE_DRIVER, NOTHING_TO_CHANGE -> car.isPresent() ? WRONG : RIGHT;
            };
        }
        if (car.isPresent() && car.get().balance() != truth.get().sign()) {
            return WRONG;
        }
        if (diagnosis.verdict() == Verdict.NOT_ENOUGH_EVIDENCE) {
            return NOT_ENOUGH;
        }
        if (car.isEmpty()) {
            return MISSED;
        }
        return truth.get().acceptPhases().contains(car.get().phase()) ? RIGHT : OTHER_PHASE;
    }
}
