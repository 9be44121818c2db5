package setwright.core.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Three parts of a lap, cut on straights, so that no corner falls into two of them.
 *
 * @param cutsM    stations of the two cuts, m, ascending
 * @param corners  numbers of the corners in each part
 */
public record Sectors(List<Double> cutsM, List<List<Integer>> corners) {
    private static final int PARTS = 3;

    public Sectors {
        cutsM = List.copyOf(cutsM);
        corners = corners.stream().map(List::copyOf).toList();
    }

    /**
     * Cuts a circuit: in the middle of the straights that lie nearest to its thirds.
     *
     * @return empty where there are not two straights to cut on
     */
    public static Optional<Sectors> of(Circuit circuit) {
        ReferenceLine line = circuit.line();
        double length = line.lengthM();
        List<Corner> ordered = circuit.corners().stream()
                .sorted(Comparator.comparingDouble(Corner::apexM))
                .toList();
        List<Double> straights = new ArrayList<>();
        for (int i = 0; i + 1 < ordered.size(); i++) {
            double from = ordered.get(i).endM();
            double to = ordered.get(i + 1).startM();
            if (to >= from - line.stepM()) { // corners may share the place where the one ends and the next begins
                straights.add(0.5 * (from + to));
            }
        }
        if (straights.size() < PARTS - 1) {
            return Optional.empty();
        }
        List<Double> cuts = new ArrayList<>();
        for (int part = 1; part < PARTS; part++) {
            double wanted = part * length / PARTS;
            straights.stream()
                    .filter(straight -> !cuts.contains(straight))
                    .min(Comparator.comparingDouble(straight -> Math.abs(straight - wanted)))
                    .ifPresent(cuts::add);
        }
        cuts.sort(Comparator.naturalOrder());
        List<List<Integer>> corners = IntStream.range(0, PARTS)
                .mapToObj(part -> ordered.stream()
                        .filter(corner -> part(corner.apexM(), cuts) == part)
                        .map(Corner::number)
                        .toList())
                .toList();
        return Optional.of(new Sectors(cuts, corners));
    }

    private static int part(double stationM, List<Double> cuts) {
        return (int) cuts.stream().filter(cut -> stationM >= cut).count();
    }

    /**
     * Returns the times of a lap's parts, s; their sum is the lap time.
     *
     * @return empty where the lap is not placed around a cut
     */
    public List<Double> timesS(Stint stint, Lap lap) {
        return new LapCuts(cutsM).timesS(stint, lap);
    }
}
