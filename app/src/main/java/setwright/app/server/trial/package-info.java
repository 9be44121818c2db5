/** Back to back on the page: trials are judged or given up, and what was ever tried is listed. In: a car. Out: verdicts with pictures. */
@NullMarked
package setwright.app.server.trial;

import org.jspecify.annotations.NullMarked;
