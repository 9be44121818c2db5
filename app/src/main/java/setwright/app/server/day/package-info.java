/**
 * Where a day begins on the page: recordings come in, stints are chosen. In: files from the browser. Out: stints of the logbook, and the
 * list of them.
 */
@NullMarked
package setwright.app.server.day;

import org.jspecify.annotations.NullMarked;
