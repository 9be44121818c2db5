/**
 * Pooling: several stints of one car, by one driver or several.
 *
 * <p>In: {@link setwright.core.judgement.Diagnosis}es on one circuit with one setup, each with its driver. Out: {@link
 * setwright.core.pooling.PooledDiagnosis}: what is common to all drivers, which belongs to the car, and what one driver has
 * alone, which is more likely his technique. The two hierarchies, of normal means and of shares, stand on their own.
 */
@NullMarked
package setwright.core.pooling;

import org.jspecify.annotations.NullMarked;
