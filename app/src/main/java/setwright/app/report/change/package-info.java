/**
 * The page of a predicted change: one HTML file that says what it would do and where.
 *
 * <p>In: a {@link setwright.app.predict.PredictionAnswer}. Out: a page that needs no network, with the drawings inline.
 */
@NullMarked
package setwright.app.report.change;

import org.jspecify.annotations.NullMarked;
