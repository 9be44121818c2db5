package setwright.core.simulation.driver;

/**
 * Something that a driver's hands or feet really did because an axle slid.
 *
 * @param reaction   what
 * @param rear       whether the rear slid, else the front
 * @param fromS      begin, s since the start of the drive
 * @param toS        end, s
 * @param lap        counted from 1, the out lap is the first
 * @param stationM   where it began, m
 */
public record DriverEvent(Reaction reaction, boolean rear, double fromS, double toS, int lap, double stationM) {}
