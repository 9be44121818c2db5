package setwright.app.diagnose;

import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.judgement.Diagnosis;

/** What is asked for a diagnosis. */
@FunctionalInterface
public interface Judge {
    /**
     * Judges a stint.
     *
     * @param baseline  a stint of the same car in good order on the same circuit, where there is one to hold it against
     */
    Diagnosis diagnose(Stint stint, CarSheet sheet, Optional<Baseline> baseline);
}
