package setwright.app.diagnose;

import java.io.IOException;
import setwright.app.evidence.Answer;
import setwright.core.car.CarSheet;
import setwright.core.proposal.LearntEffects;
import setwright.core.proposal.Proposal;

/** Laps that can be judged, wherever they lie. */
public interface LapSource {
    /** Returns what people call them. */
    String name();

    /**
     * A car sheet with what messages call it.
     *
     * @param name   of the file, or of the setup
     * @param sheet  read
     */
    record NamedCar(String name, CarSheet sheet) {}

    /**
     * Returns what is known of the car, before any lap is read.
     *
     * @throws IOException when a sheet cannot be read
     */
    NamedCar car() throws IOException;

    /**
     * Reads the laps and judges them; takes {@link Diagnoser#STEPS} steps.
     *
     * @throws IOException when something cannot be read or written
     */
    Answer answer(Progress progress) throws IOException;

    /** Returns what is known of this car from changes that were tried; nothing where nobody keeps it. */
    default LearntEffects learnt() {
        return LearntEffects.none();
    }

    /** Takes note of what was found, where notes are kept. */
    default void found(Answer answer) {}

    /** Takes note of what was proposed, where notes are kept. */
    default void proposed(Proposal proposal) {}
}
