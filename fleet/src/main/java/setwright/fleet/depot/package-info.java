/**
 * Where files lie: in a folder, or wherever Hadoop's file systems reach (hdfs and object stores).
 *
 * <p>In: the address of a root. Out: a {@link setwright.fleet.depot.Depot}, which lists, reads, and puts whole files below it.
 */
@NullMarked
package setwright.fleet.depot;

import org.jspecify.annotations.NullMarked;
