/**
 * The commands of the program.
 *
 * <p>In: the options of one call. Out: results on standard output, progress and messages on standard error, an exit code.
 */
@NullMarked
package setwright.app.command;

import org.jspecify.annotations.NullMarked;
