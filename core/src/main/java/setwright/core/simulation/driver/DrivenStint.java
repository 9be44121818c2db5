package setwright.core.simulation.driver;

import java.util.List;
import java.util.Optional;
import setwright.core.simulation.driven.DriveHistory;

/**
 * What came of a stint.
 *
 * @param history   every signal, at {@link StintSimulator#RECORD_S}
 * @param lapsS     time of every lap that was finished, the out lap first, s
 * @param events    what hands and feet did because an axle slid
 * @param lost      where the drive ended when the car was lost
 */
public record DrivenStint(DriveHistory history, List<Double> lapsS, List<DriverEvent> events, Optional<Lost> lost) {

    public DrivenStint {
        lapsS = List.copyOf(lapsS);
        events = List.copyOf(events);
    }

    /**
     * A spin, or a car that came to a stand.
     *
     * @param lap       counted from 1, the out lap is the first
     * @param stationM  where, m
     */
    public record Lost(int lap, double stationM) {}

    /** Returns the mean of the flying laps, s; NaN without one. */
    public double meanFlyingS() {
        return lapsS.stream().skip(1).mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }
}
