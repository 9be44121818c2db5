/**
 * The command {@code sums}: the everyday calculations.
 *
 * <p>In: options and, where wanted, a car sheet; an option overrides the sheet. Out: a
 * {@link setwright.core.car.worked.Calculation} or two, shown as text or JSON. Each sum is one class here that says which
 * values it needs, and is registered in {@link setwright.app.command.sums.SumsCommand}.
 */
@NullMarked
package setwright.app.command.sums;

import org.jspecify.annotations.NullMarked;
