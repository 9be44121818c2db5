/**
 * Simulated laps as files: what a logger and a person would have kept of them.
 *
 * <p>In: tables of {@link setwright.core.simulation.logger} and car sheets of the invented world. Out: a recording as CSV, the sheet with
 * its changed setup, and what was really going on.
 */
@NullMarked
package setwright.app.simulate;

import org.jspecify.annotations.NullMarked;
