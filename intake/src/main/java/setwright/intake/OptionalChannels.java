package setwright.intake;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import setwright.core.recording.Quantity;

/** What follows from optional channels where the usual one was not recorded. */
final class OptionalChannels {
    private static final List<String> WHEELS = List.of("FRONT_LEFT", "FRONT_RIGHT", "REAR_LEFT", "REAR_RIGHT");
    private static final List<String> THIRDS = List.of("INNER", "MIDDLE", "OUTER");

    private OptionalChannels() {}

    /**
     * Where there is no brake channel, the mean of the circuits' pressures becomes it, in Pa: with a balance bar the two add up to what the
     * foot puts in.
     *
     * @return whether it did
     */
    static boolean brakeFromCircuits(Map<Quantity, double[]> channels, List<String> remarks) {
        List<Quantity> circuits = Stream.of(Quantity.BRAKE_PRESSURE_FRONT, Quantity.BRAKE_PRESSURE_REAR)
                .filter(channels::containsKey)
                .toList();
        if (channels.containsKey(Quantity.BRAKE) || circuits.isEmpty()) {
            return false;
        }
        channels.put(Quantity.BRAKE, mean(channels, circuits));
        remarks.add("The brake is "
                + (circuits.size() == 1 ? "the " + circuits.get(0).words() : "the mean of both circuits' pressures")
                + ", because no brake channel was recorded.");
        return true;
    }

    /** Where a tyre has no temperature of its own, the mean of those across its tread becomes it. */
    static void tyreFromThirds(Map<Quantity, double[]> channels, List<String> remarks) {
        boolean any = false;
        for (String wheel : WHEELS) {
            List<Quantity> thirds = THIRDS.stream()
                    .map(third -> Quantity.valueOf("TYRE_TEMPERATURE_" + third + "_" + wheel))
                    .filter(channels::containsKey)
                    .toList();
            Quantity whole = Quantity.valueOf("TYRE_TEMPERATURE_" + wheel);
            if (!thirds.isEmpty() && !channels.containsKey(whole)) {
                channels.put(whole, mean(channels, thirds));
                any = true;
            }
        }
        if (any) {
            remarks.add("A tyre's temperature is the mean of those recorded across its tread.");
        }
    }

    private static double[] mean(Map<Quantity, double[]> channels, List<Quantity> quantities) {
        List<double[]> all = quantities.stream()
                .map(quantity -> Objects.requireNonNull(channels.get(quantity), quantity.words()))
                .toList();
        double[] mean = new double[all.get(0).length];
        for (double[] one : all) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += one[i] / all.size();
            }
        }
        return mean;
    }
}
