/**
 * The local page: the chain of reasoning in a browser on this machine. {@code guard} lets requests in, {@code job} does what takes long,
 * {@code day}, {@code stint}, {@code trial} and {@code log} answer, {@code view} frames. In: a logbook and what judges its stints. Out:
 * an address to look at.
 */
@NullMarked
package setwright.app.server;

import org.jspecify.annotations.NullMarked;
