/**
 * The report: one HTML file that argues from laps to verdict.
 *
 * <p>In: an {@link setwright.app.evidence.Answer} and its story. Out: a page that needs no network, with the drawings inline.
 */
@NullMarked
package setwright.app.report;

import org.jspecify.annotations.NullMarked;
