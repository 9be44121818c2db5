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
     * A stint, and what is known of its circuit.
     *
     * @param stint  on the circuit
     * @param row    of the circuit, when the logbook has it
     * @param told   its name, when somebody told it
     */
    record Found(Stint stint, Optional<CircuitRow> row, Optional<String> told) {}

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
            return new Found(laid(recording, told.get()), told, name);
        }
        Optional<Found> fitting = name.isPresent()
                ? Optional.empty()
                : known.stream()
                        .flatMap(row ->
                                fits(recording, row).stream().map(stint -> new Found(stint, Optional.of(row), name)))
                        .findFirst();
        return fitting.orElseGet(() -> begun(recording, name));
    }

    private static Optional<Stint> fits(Recording recording, CircuitRow row) {
        try {
            return Optional.of(laid(recording, row));
        } catch (OtherCircuit elsewhere) {
            return Optional.empty();
        }
    }

    private static Found begun(Recording recording, Optional<String> name) {
        Circuit circuit = StintBuilder.build(recording).circuit();
        return new Found(StintBuilder.build(recording, circuit), Optional.empty(), name);
    }

    static Stint laid(Recording recording, CircuitRow row) {
        return StintBuilder.build(recording, CircuitFile.parse(row.name(), row.document()));
    }
}
