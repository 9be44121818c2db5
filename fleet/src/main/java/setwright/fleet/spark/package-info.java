/**
 * Apache Spark: how it is started, on this machine or on a cluster, and what it is sent.
 *
 * <p>In: the address of a cluster, or a number of workers. Out: a context or a session, and work spread over it.
 */
@NullMarked
package setwright.fleet.spark;

import org.jspecify.annotations.NullMarked;
