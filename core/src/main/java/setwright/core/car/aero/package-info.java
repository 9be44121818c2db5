/**
 * Aerodynamics: downforce at each axle and drag over speed, ride height and wing setting.
 *
 * <p>In: speed and ride heights. Out: forces. Coefficients are given as areas (coefficient times reference area), so that no
 * reference area has to be known.
 */
@NullMarked
package setwright.core.car.aero;

import org.jspecify.annotations.NullMarked;
