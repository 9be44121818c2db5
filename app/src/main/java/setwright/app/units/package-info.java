/**
 * Figures as people read them: units, signs, rounding.
 *
 * <p>In: SI values. Out: text in the units the user chose. The only place where a value is converted for the eye.
 */
@NullMarked
package setwright.app.units;

import org.jspecify.annotations.NullMarked;
