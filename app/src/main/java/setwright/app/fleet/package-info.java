/**
 * The use case of many recordings, as the command line knows it.
 *
 * <p>In: a tree of recordings, where the tables go, what works on it. Out: how many were judged, and what a school asks of the tables. The
 * work is done by the module fleet, on Apache Spark, which is found when it is on the class path ({@link setwright.app.fleet.FleetEngine}).
 */
@NullMarked
package setwright.app.fleet;

import org.jspecify.annotations.NullMarked;
