/**
 * The program: starts, reads the command line, answers with an exit code.
 *
 * <p>In: the arguments of the process. Out: results on standard output, messages on standard error.
 * Each command parses, calls one use case and shows its result; nothing is computed here.
 */
@NullMarked
package setwright.app;

import org.jspecify.annotations.NullMarked;
