/**
 * The page of a setup sweep: one HTML file with lap time and balance over one item, or a map over two.
 *
 * <p>In: a {@link setwright.app.sweep.SweepAnswer}. Out: a page that needs no network, with the drawings inline.
 */
@NullMarked
package setwright.app.report.sweep;

import org.jspecify.annotations.NullMarked;
