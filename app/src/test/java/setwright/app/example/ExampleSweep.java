package setwright.app.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.app.sweep.SweepAnswer;
import setwright.core.car.SetupItem;
import setwright.core.circuit.Circuit;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;
import setwright.core.simulation.sweep.SweptCorner;
import setwright.core.simulation.sweep.SweptLap;

/** Invented sweeps: a parabola of lap time, balance straight over the item. */
public final class ExampleSweep {
    private static final int CORNERS = 5;

    private ExampleSweep() {}

    /** Returns a sweep of one item. */
    public static SweepAnswer one() {
        return answer(List.of(bar()), circuit(), Optional.empty());
    }

    /** Returns a sweep of two. */
    public static SweepAnswer two() {
        return answer(List.of(bar(), wing()), circuit(), Optional.of("stint.csv.gz"));
    }

    /** Returns a sweep of one item that changes nothing. */
    public static SweepAnswer flat() {
        SweptLap lap = lap(List.of(5.0), 0.0);
        return new SweepAnswer(
                Example.answer().car(),
                circuit(),
                Optional.empty(),
                new SetupSweep(
                        List.of(bar()),
                        lap,
                        bar().values().stream()
                                .map(value -> lap(List.of(value), 0.0))
                                .toList()));
    }

    /** Returns a sweep of one item at a circuit of that name. */
    public static SweepAnswer at(String name) {
        Circuit usual = circuit();
        return answer(
                List.of(bar()), new Circuit(name, usual.line(), usual.corners(), usual.anchor()), Optional.empty());
    }

    private static SweepAnswer answer(List<SweepItem> items, Circuit circuit, Optional<String> recording) {
        List<SweptLap> laps = new ArrayList<>();
        for (double first : items.get(0).values()) {
            if (items.size() == 1) {
                laps.add(lap(List.of(first), first - 5.0));
            } else {
                items.get(1).values().forEach(second -> laps.add(lap(List.of(first, second), first - second)));
            }
        }
        List<Double> present = items.stream().map(item -> item.item().value()).toList();
        SweptLap now = laps.stream()
                .filter(lap -> lap.values().equals(present))
                .findFirst()
                .orElseThrow();
        return new SweepAnswer(Example.answer().car(), circuit, recording, new SetupSweep(items, now, laps));
    }

    private static SweptLap lap(List<Double> values, double turned) {
        return new SweptLap(
                values,
                90.0 + 0.02 * (turned + 2.0) * (turned + 2.0),
                20.0 - 0.05 * turned,
                60.0,
                0.4 + 0.02 * turned,
                0.3 - 0.02 * turned,
                0.3,
                IntStream.rangeClosed(1, CORNERS)
                        .mapToObj(corner -> new SweptCorner(
                                corner, 15.0 + 6.0 * corner - 0.05 * turned, 5.0 + corner, 0.002 * turned / corner))
                        .toList());
    }

    private static SweepItem bar() {
        return new SweepItem(
                new SetupItem("front_bar", 5.0, "position", 1.0, 11.0, 1.0),
                IntStream.rangeClosed(1, 11).mapToObj(Double::valueOf).toList());
    }

    private static SweepItem wing() {
        return new SweepItem(
                new SetupItem("rear_wing", 6.0, "step", 2.0, 10.0, 1.0),
                IntStream.rangeClosed(2, 10).mapToObj(Double::valueOf).toList());
    }

    private static Circuit circuit() {
        return Example.answer().diagnosis().stint().circuit();
    }
}
