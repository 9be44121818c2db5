/**
 * Who may ask the local page for what: only pages that came from it, on this machine. In: a request. Out: the request, or a refusal in
 * words; and headers that forbid the browser everything the page does not need.
 */
@NullMarked
package setwright.app.server.guard;

import org.jspecify.annotations.NullMarked;
