package setwright.fleet.circuits;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import setwright.fleet.depot.Depot;
import setwright.fleet.ledger.OutLayout;
import setwright.fleet.tree.Recorded;

/** The circuits that recordings are judged on, kept among the tables, so that a later run uses the same ones. */
public final class CircuitBook {
    private final Depot out;
    private final Map<String, byte[]> known = new TreeMap<>();
    private final Map<String, List<Recorded>> groups = new TreeMap<>();

    /**
     * Opens the book: given circuit files count first, then what an earlier run has kept. Where a tree gives several files for one circuit,
     * that of the first recording counts for all.
     *
     * @param tree        of the recordings
     * @param out         of the tables
     * @param recordings  of the tree, in order
     */
    public CircuitBook(Depot tree, Depot out, List<Recorded> recordings) throws IOException {
        this.out = out;
        for (Recorded recorded : recordings) {
            if (!recorded.circuit().isEmpty()) {
                groups.computeIfAbsent(recorded.circuit(), name -> new ArrayList<>())
                        .add(recorded);
            }
        }
        for (Map.Entry<String, List<Recorded>> group : groups.entrySet()) {
            String given = group.getValue().stream()
                    .map(Recorded::circuitFile)
                    .filter(file -> !file.isEmpty())
                    .findFirst()
                    .orElse("");
            String kept = OutLayout.circuit(group.getKey());
            if (!given.isEmpty()) {
                known.put(group.getKey(), tree.read(given));
            } else if (out.has(kept)) {
                known.put(group.getKey(), out.read(kept));
            }
        }
    }

    /** Returns the recordings of each circuit that has to be found. */
    public Map<String, List<Recorded>> missing() {
        Map<String, List<Recorded>> missing = new TreeMap<>(groups);
        missing.keySet().removeAll(known.keySet());
        return missing;
    }

    /** Takes a circuit that was found. */
    public void found(String name, byte[] text) {
        known.put(name, text);
    }

    /** Returns the names of the circuits that are known. */
    public Set<String> names() {
        return Set.copyOf(known.keySet());
    }

    /** Returns what the file of a circuit holds; nothing when it is not known. */
    public byte[] text(String name) {
        return known.getOrDefault(name, new byte[0]);
    }

    /** Keeps all that are known among the tables. */
    public void keep() throws IOException {
        for (Map.Entry<String, byte[]> circuit : known.entrySet()) {
            String name = OutLayout.circuit(circuit.getKey());
            if (!out.has(name) || !Arrays.equals(out.read(name), circuit.getValue())) {
                out.put(circuit.getValue(), name);
            }
        }
    }
}
