/**
 * The page of several stints of one car.
 *
 * <p>In: a {@link setwright.app.evidence.PooledAnswer}. Out: one HTML document: the verdict, what belongs to the car and what
 * to a driver, and each stint's own verdict.
 */
@NullMarked
package setwright.app.report.pooled;

import org.jspecify.annotations.NullMarked;
