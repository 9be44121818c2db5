/**
 * What a driver can do himself about a problem, proved by his own laps: the cheapest cure, tried before any change of the car.
 *
 * <p>In: a diagnosis. Out: levers of technique, corner by corner and pooled, each with the size of the move, an interval, the laps
 * that prove it and how strong the proof is. Nothing is proposed that physics contradicts, nor a move that the driver has not made
 * himself.
 */
@NullMarked
package setwright.core.technique;

import org.jspecify.annotations.NullMarked;
