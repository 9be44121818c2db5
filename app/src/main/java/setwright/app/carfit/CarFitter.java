package setwright.app.carfit;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.identification.CarFit;
import setwright.core.judgement.Diagnosis;

/** Identifies a car from laps. */
@FunctionalInterface
public interface CarFitter {

    /**
     * Returns what the laps tell.
     *
     * @param diagnoses  of one recording or several of the same car, at least one
     * @param car        what is known before
     */
    CarFit fit(List<Diagnosis> diagnoses, CarSheet car);
}
