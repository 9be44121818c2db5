/**
 * What sensors other than those of the motion tell, on the page.
 *
 * <p>In: {@link setwright.core.chassis.ChassisEvidence} and its words. Out: the section with its drawings.
 */
@NullMarked
package setwright.app.report.sensors;

import org.jspecify.annotations.NullMarked;
