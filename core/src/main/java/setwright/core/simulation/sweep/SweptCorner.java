package setwright.core.simulation.sweep;

/**
 * A corner of a lap in one setup.
 *
 * @param number      of the corner
 * @param lowestMps   m/s
 * @param timeS       from where its approach begins to where its exit ends, s
 * @param balanceRad  front less rear slip angle, rad, mean over the time in which at least half of the corner's greatest lateral
 *                    acceleration is used; positive understeers
 */
public record SweptCorner(int number, double lowestMps, double timeS, double balanceRad) {}
