/** The story on the page: what was done in order, notes, search. In: words. Out: entries of the logbook. */
@NullMarked
package setwright.app.server.log;

import org.jspecify.annotations.NullMarked;
