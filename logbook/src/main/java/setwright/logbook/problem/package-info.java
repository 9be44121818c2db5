/** What can be wrong with a logbook and be mended by its user. */
@NullMarked
package setwright.logbook.problem;

import org.jspecify.annotations.NullMarked;
