package setwright.core.identification;

import java.util.List;

/**
 * What the laps told of the car, to be shown.
 *
 * @param values    each quantity before and after
 * @param evidence  data beside the fitted car
 */
public record CarFit(List<FittedValue> values, List<FitEvidence> evidence) {
    public CarFit {
        values = List.copyOf(values);
        evidence = List.copyOf(evidence);
    }
}
