/**
 * What to change next, with the laps it rests on: what the command line shows as text, JSON and a page.
 *
 * <p>The choice itself is made in {@code setwright.core.proposal}.
 */
@NullMarked
package setwright.app.propose;

import org.jspecify.annotations.NullMarked;
