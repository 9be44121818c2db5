package setwright.app.truthbench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.TriggerEvidence;
import setwright.core.judgement.TriggerEvidence.Witness;

/**
 * A case of a tuning seed, reduced to what speaks for its trigger.
 *
 * @param seed      of its draw
 * @param number    in it
 * @param fault     in words
 * @param truth     the trigger of its mechanism
 * @param evidence  what the program gathered
 */
record TriggerCase(long seed, int number, String fault, Trigger truth, TriggerEvidence evidence) {
    private static final String FILE = "trigger-cases.csv";
    private static final List<Witness> WITNESSES = List.of(Witness.SETUP, Witness.PHASE);

    /** Returns the cases that the weights were fitted on, as {@link TriggerCalibration} collected them. */
    static List<TriggerCase> kept() {
        try (InputStream in = Objects.requireNonNull(TriggerCase.class.getResourceAsStream(FILE), FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(TriggerCase::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads a line as {@link #line} writes it. */
    static TriggerCase read(String line) {
        String[] cells = line.split(";", -1);
        Map<Witness, Map<Trigger, Double>> shares = new EnumMap<>(Witness.class);
        for (int i = 0; i < WITNESSES.size(); i++) {
            if (!cells[4 + i].isEmpty()) {
                double[] each = Arrays.stream(cells[4 + i].split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
                Map<Trigger, Double> byTrigger = new EnumMap<>(Trigger.class);
                for (Trigger trigger : Trigger.values()) {
                    byTrigger.put(trigger, each[trigger.ordinal()]);
                }
                shares.put(WITNESSES.get(i), byTrigger);
            }
        }
        return new TriggerCase(
                Long.parseLong(cells[0]),
                Integer.parseInt(cells[1]),
                cells[2],
                Trigger.valueOf(cells[3]),
                new TriggerEvidence(shares));
    }

    /** Returns seed, number, fault, truth, then for setup and phases the shares in the order of the triggers; empty: silent. */
    String line() {
        return String.join(
                ";",
                Long.toString(seed),
                Integer.toString(number),
                fault,
                truth.name(),
                shares(Witness.SETUP),
                shares(Witness.PHASE));
    }

    private String shares(Witness witness) {
        return evidence.shares().containsKey(witness)
                ? Arrays.stream(Trigger.values())
                        .map(trigger -> String.format(Locale.ROOT, "%.3f", evidence.share(witness, trigger)))
                        .collect(Collectors.joining(" "))
                : "";
    }
}
