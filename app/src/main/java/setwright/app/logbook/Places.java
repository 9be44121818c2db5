package setwright.app.logbook;

import java.util.List;
import java.util.Optional;
import setwright.app.circuit.CircuitFile;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.OtherCircuit;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.recording.Recording;
import setwright.logbook.row.CircuitRow;

/** Finds out on which circuit of the logbook a recording was made. */
final class Places {
    private Places() {}

    /**
     * A stint with the name of its circuit.
     *
     * @param stint  on the circuit
     * @param name   of the circuit
     * @param known  whether the logbook has it
     */
    record Found(Stint stint, String name, boolean known) {}

    /**
     * Lays a recording on a circuit.
     *
     * @param known  circuits of the logbook, the likeliest first
     * @param name   of the circuit, when it was told
     * @throws OtherCircuit when it was told and is another one
     */
    static Found find(Recording recording, List<CircuitRow> known, Optional<String> name) {
        Optional<CircuitRow> told = known.stream()
                .filter(row -> name.filter(row.name()::equals).isPresent())
                .findFirst();
        if (told.isPresent()) {
            return new Found(laid(recording, told.get()), told.get().name(), true);
        }
        Optional<Found> fitting = name.isPresent()
                ? Optional.empty()
                : known.stream()
                        .flatMap(row -> fits(recording, row).stream().map(stint -> new Found(stint, row.name(), true)))
                        .findFirst();
        return fitting.orElseGet(() -> begun(recording, name.orElse("circuit " + (known.size() + 1))));
    }

    private static Optional<Stint> fits(Recording recording, CircuitRow row) {
        try {
            return Optional.of(laid(recording, row));
        } catch (OtherCircuit elsewhere) {
            return Optional.empty();
        }
    }

    private static Found begun(Recording recording, String name) {
        Circuit circuit = StintBuilder.build(recording).circuit();
        return new Found(StintBuilder.build(recording, circuit), name, false);
    }

    static Stint laid(Recording recording, CircuitRow row) {
        return StintBuilder.build(recording, CircuitFile.parse(row.name(), row.document()));
    }
}
