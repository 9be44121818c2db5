/**
 * Which reader a file is for, told by its first bytes, never by its name.
 *
 * <p>In: a file of any kind. Out: its tables, one for each rate it was recorded at.
 */
@NullMarked
package setwright.intake.source;

import org.jspecify.annotations.NullMarked;
