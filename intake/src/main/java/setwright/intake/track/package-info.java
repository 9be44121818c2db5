/**
 * Where the car was, from receivers of satellite positions: NMEA 0183 sentences and GPX tracks.
 *
 * <p>In: a file of either. Out: {@link setwright.intake.table.Table} with time, latitude, longitude and, where it was told, speed and altitude. Such a
 * table alone does not tell how a car was driven; it is put beside one that does ({@link setwright.intake.gather}).
 */
@NullMarked
package setwright.intake.track;

import org.jspecify.annotations.NullMarked;
