/**
 * Stints that are open on the page: read and judged once, then looked at from every side. In: a stint's number. Out: the chain of
 * reasoning as a document, the laps' columns for the traces, what another setup would have done.
 */
@NullMarked
package setwright.app.server.stint;

import org.jspecify.annotations.NullMarked;
