/**
 * The use case: laps of the invented world, as files that the rest of the program reads like any other.
 *
 * <p>In: an {@link setwright.app.simulate.Experiment}: car, circuit, what is wrong, who drives, what records. Out: what was driven, the
 * recording and the sheet that its user would have. To add a driver, add a line to {@link setwright.app.simulate.DriverKind}.
 */
@NullMarked
package setwright.app.simulate;

import org.jspecify.annotations.NullMarked;
