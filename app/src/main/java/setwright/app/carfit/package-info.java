/**
 * The use case: what laps tell of a car beyond its sheet.
 *
 * <p>In: {@link setwright.app.evidence.Answer}s of the same car. Out: a {@link setwright.app.carfit.CarFitAnswer}.
 */
@NullMarked
package setwright.app.carfit;

import org.jspecify.annotations.NullMarked;
