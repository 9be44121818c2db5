/**
 * What setup changes do to balance by the model, against the signs that handbooks agree on.
 *
 * <p>In: invented cars, changes of a setup or of the car itself. Out: for each change and phase of a corner, the sign of the change of
 * the balance angle, beside the handbooks' sign and, where they differ, the reason.
 */
@NullMarked
package setwright.core.car.model.validation.signs;

import org.jspecify.annotations.NullMarked;
