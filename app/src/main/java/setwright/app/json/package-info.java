/**
 * The answer for programs.
 *
 * <p>In: an {@link setwright.app.evidence.Answer}, a {@link setwright.app.predict.PredictionAnswer} or a {@link
 * setwright.app.carfit.CarFitAnswer}. Out: JSON of the shapes in docs/diagnose.schema.json, docs/predict.schema.json and
 * docs/car-fit.schema.json, version 1 each. In: {@link setwright.core.car.worked.Calculation}s; out: the JSON of {@code sums}.
 */
@NullMarked
package setwright.app.json;

import org.jspecify.annotations.NullMarked;
