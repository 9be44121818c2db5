/**
 * The page of an identified car: one HTML file with what the laps told and the data beside the fitted car.
 *
 * <p>In: a {@link setwright.app.carfit.CarFitAnswer}. Out: a page that needs no network, with the drawings inline.
 */
@NullMarked
package setwright.app.report.fit;

import org.jspecify.annotations.NullMarked;
