/**
 * The manual: one page for each command, as {@code man} reads it.
 *
 * <p>In: the commands with their options, descriptions, exit codes and examples, as the command line knows them. Out: text in
 * the page format of {@code man}. Nothing is said here that {@code --help} does not say as well.
 */
@NullMarked
package setwright.app.manual;

import org.jspecify.annotations.NullMarked;
