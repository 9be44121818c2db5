/**
 * Sums worked out for a reader: with what went in, what came out, by which formula, from which source.
 *
 * <p>In: {@link setwright.core.car.worked.Input}s, each with its unit and where it comes from. Out: a
 * {@link setwright.core.car.worked.Calculation}, so that text, JSON and page show the same. The figures come from
 * {@link setwright.core.car.sums}; a test evaluates every formula as shown against them.
 */
@NullMarked
package setwright.core.car.worked;

import org.jspecify.annotations.NullMarked;
