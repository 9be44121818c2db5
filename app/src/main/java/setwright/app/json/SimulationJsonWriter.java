package setwright.app.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import setwright.app.simulate.Experiment;
import setwright.core.simulation.driver.DrivenStint;

/** Writes what is true of a simulated stint as JSON of version 1. */
public final class SimulationJsonWriter {
    private static final int VERSION = 1;

    private SimulationJsonWriter() {}

    /**
     * Returns the JSON text, ending with a line break.
     *
     * @param fault   its name, or none
     * @param driver  short name
     */
    public static String write(Experiment experiment, String fault, String driver, DrivenStint stint) {
        List<Double> times = stint.lapsS();
        SimulationJson json = new SimulationJson(
                VERSION,
                experiment.car().name(),
                experiment.circuit().name(),
                fault,
                experiment.changes().stream()
                        .map(change -> new SimulationJson.Changed(change.item(), change.from(), change.to()))
                        .toList(),
                driver,
                experiment.seed(),
                IntStream.range(0, times.size())
                        .mapToObj(lap -> new SimulationJson.Lap(lap + 1, rounded(times.get(lap), 3)))
                        .toList(),
                stint.events().stream()
                        .map(event -> new SimulationJson.Hands(
                                event.reaction().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                event.rear() ? "rear" : "front",
                                event.lap(),
                                rounded(event.stationM(), 1),
                                rounded(event.fromS(), 3),
                                rounded(event.toS(), 3)))
                        .toList(),
                stint.lost().map(lost -> new SimulationJson.Lost(lost.lap(), rounded(lost.stationM(), 1))));
        return Numbers.text(json);
    }

    private static double rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }
}
