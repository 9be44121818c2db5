package setwright.core.simulation.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.limit.Envelope;
import setwright.core.limit.LapSimulator;
import setwright.core.limit.LimitedBy;
import setwright.core.limit.QuasiSteadyLap;
import setwright.core.limit.Station;

/*
 * Design note. Every setup starts from the present one's envelope, not from its neighbour's: the answer then depends neither on the
 * order nor on the number of cores, and each lap differs from the present one by what the setup does.
 */

/** Drives a car round a circuit in many setups, on all cores. */
public final class Sweeper {
    private static final double MUCH_OF_A_CORNER = 0.5;

    private final CarSheet sheet;
    private final double[] parameters;
    private final Circuit circuit;

    /**
     * Makes a sweeper.
     *
     * @param sheet       of the car as it is
     * @param parameters  by index of {@link setwright.core.car.model.Parameter}
     * @param circuit     with its corners
     */
    public Sweeper(CarSheet sheet, double[] parameters, Circuit circuit) {
        this.sheet = sheet;
        this.parameters = parameters.clone();
        this.circuit = circuit;
    }

    /**
     * Returns the laps over one item or two.
     *
     * @param onLap  is told after each lap, from any thread
     */
    public SetupSweep sweep(List<SweepItem> items, Runnable onLap) {
        if (items.isEmpty() || items.size() > 2) {
            throw new IllegalArgumentException("a sweep takes one or two items, got " + items.size());
        }
        CarAssembler assembler = new CarAssembler(sheet);
        Envelope present = Envelope.of(assembler.build(parameters));
        SweptLap presentLap =
                lap(present, items.stream().map(item -> item.item().value()).toList());
        onLap.run();
        List<List<Double>> settings = settings(items);
        List<SweptLap> laps = IntStream.range(0, settings.size())
                .parallel()
                .mapToObj(i -> {
                    List<Double> values = settings.get(i);
                    CarSheet setup = sheet.with(changes(items, values));
                    SweptLap lap = values.equals(presentLap.values())
                            ? presentLap
                            : lap(Envelope.of(assembler.build(setup, parameters), present), values);
                    onLap.run();
                    return lap;
                })
                .toList();
        return new SetupSweep(items, presentLap, laps);
    }

    private static List<List<Double>> settings(List<SweepItem> items) {
        List<List<Double>> settings = new ArrayList<>();
        for (double first : items.get(0).values()) {
            if (items.size() == 1) {
                settings.add(List.of(first));
                continue;
            }
            items.get(1).values().forEach(second -> settings.add(List.of(first, second)));
        }
        return settings;
    }

    private static List<SetupChange> changes(List<SweepItem> items, List<Double> values) {
        return IntStream.range(0, items.size())
                .mapToObj(i -> new SetupChange(
                        items.get(i).item().name(), items.get(i).item().value(), values.get(i)))
                .toList();
    }

    private SweptLap lap(Envelope envelope, List<Double> values) {
        QuasiSteadyLap lap = LapSimulator.lap(envelope, circuit.line());
        return new SweptLap(
                values,
                lap.timeS(),
                lap.lowestMps(),
                lap.highestMps(),
                lap.timeShare(LimitedBy.FRONT_AXLE),
                lap.timeShare(LimitedBy.REAR_AXLE),
                lap.timeShare(LimitedBy.ENGINE),
                circuit.corners().stream().map(corner -> corner(lap, corner)).toList());
    }

    private static SweptCorner corner(QuasiSteadyLap lap, Corner corner) {
        List<Station> stations = lap.between(corner.turnInM(), corner.turnOutM());
        double most = stations.stream()
                .mapToDouble(station -> Math.abs(station.lateralMps2()))
                .max()
                .orElse(0.0);
        double time = 0.0;
        double sum = 0.0;
        for (Station station : stations) {
            if (Math.abs(station.lateralMps2()) >= MUCH_OF_A_CORNER * most) {
                time += 1.0 / station.speedMps();
                sum += station.balanceRad() / station.speedMps();
            }
        }
        return new SweptCorner(
                corner.number(),
                lap.lowestMps(corner.turnInM(), corner.turnOutM()),
                lap.timeS(corner.startM(), corner.endM()),
                sum / time);
    }
}
