package setwright.core.limit;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A lap of a closed line on which the car is at a limit everywhere.
 *
 * @param stepM     distance between stations, m
 * @param stations  at equal steps from the start line, once round
 * @param energy    where the engine's work went
 */
public record QuasiSteadyLap(double stepM, List<Station> stations, EnergyBalance energy) {
    public QuasiSteadyLap {
        stations = List.copyOf(stations);
    }

    /** Returns the length, m. */
    public double lengthM() {
        return stepM * stations.size();
    }

    /** Returns the lap time, s. */
    public double timeS() {
        return IntStream.range(0, stations.size()).mapToDouble(this::stepS).sum();
    }

    /**
     * Returns the time between two places, s: a corner's or a sector's.
     *
     * @param fromM  m
     * @param toM    m, not before {@code fromM}; beyond the length it goes on into the next lap
     */
    public double timeS(double fromM, double toM) {
        return sinceStartS(toM) - sinceStartS(fromM);
    }

    /** Returns the lowest speed, m/s. */
    public double lowestMps() {
        return stations.stream().mapToDouble(Station::speedMps).min().orElseThrow();
    }

    /** Returns the lowest speed between two places, m/s. */
    public double lowestMps(double fromM, double toM) {
        return between(fromM, toM).stream().mapToDouble(Station::speedMps).min().orElseThrow();
    }

    /** Returns the stations between two places, one at least; beyond the start line they go on. */
    public List<Station> between(double fromM, double toM) {
        int first = (int) Math.ceil(fromM / stepM);
        int last = Math.max(first, (int) Math.floor(toM / stepM));
        return IntStream.rangeClosed(first, last).mapToObj(this::station).toList();
    }

    /** Returns the highest speed, m/s. */
    public double highestMps() {
        return stations.stream().mapToDouble(Station::speedMps).max().orElseThrow();
    }

    /** Returns the share of the lap time during which something limits, 0..1. */
    public double timeShare(LimitedBy what) {
        return IntStream.range(0, stations.size())
                        .filter(i -> stations.get(i).limitedBy() == what)
                        .mapToDouble(this::stepS)
                        .sum()
                / timeS();
    }

    private double stepS(int index) {
        return 2.0 * stepM / (station(index).speedMps() + station(index + 1).speedMps());
    }

    private double sinceStartS(double placeM) {
        double laps = Math.floor(placeM / lengthM());
        double position = (placeM - laps * lengthM()) / stepM;
        int whole = Math.min((int) position, stations.size() - 1);
        double before = IntStream.range(0, whole).mapToDouble(this::stepS).sum();
        return laps * timeS() + before + (position - whole) * stepS(whole);
    }

    private Station station(int index) {
        return stations.get(Math.floorMod(index, stations.size()));
    }
}
