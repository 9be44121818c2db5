/**
 * Identification: what the laps tell of the car beyond the car sheet.
 *
 * <p>In: a traced stint and the car sheet. Out: {@link setwright.core.identification.CarFit}: the car's uncertain
 * parameters with intervals, what each was before the laps, the evidence to look at, and what these data cannot tell.
 */
@NullMarked
package setwright.core.identification;

import org.jspecify.annotations.NullMarked;
