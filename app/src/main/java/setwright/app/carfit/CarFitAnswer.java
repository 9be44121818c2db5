package setwright.app.carfit;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.identification.CarFit;
import setwright.core.identification.FittedValue;

/**
 * What laps told of a car.
 *
 * @param car         what was known before
 * @param recordings  names of what was read
 * @param laps        number of judged laps in all
 * @param fit         the answer
 */
public record CarFitAnswer(CarSheet car, List<String> recordings, int laps, CarFit fit) {
    public CarFitAnswer {
        recordings = List.copyOf(recordings);
    }

    /** Returns the values that the laps told, or those that they could not tell. */
    public List<FittedValue> values(boolean told) {
        return fit.values().stream().filter(value -> value.told() == told).toList();
    }
}
