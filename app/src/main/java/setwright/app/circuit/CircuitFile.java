package setwright.app.circuit;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import setwright.app.files.WholeFile;
import setwright.core.circuit.Circuit;
import setwright.intake.problem.InputProblem;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Keeps circuits in JSON files. */
public final class CircuitFile {
    /** Some hundred kilometres of line; a larger file is no circuit. */
    private static final long LARGEST_BYTES = 64L << 20;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .build();

    private CircuitFile() {}

    /**
     * Writes a circuit.
     *
     * @throws IOException when it cannot be written
     */
    public static void write(Path file, Circuit circuit) throws IOException {
        WholeFile.write(file, text(circuit));
    }

    /** Returns what a file of this circuit holds. */
    public static String text(Circuit circuit) {
        return MAPPER.writeValueAsString(CircuitJson.of(circuit)) + "\n";
    }

    /**
     * Reads a circuit.
     *
     * @throws IOException when the file cannot be read
     * @throws InputProblem when it is no circuit file
     */
    public static Circuit read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw refused(name, "a file of " + Files.size(file) + " bytes", new IOException("too large"));
            }
            return parse(name, Files.readString(file));
        } catch (CharacterCodingException e) {
            throw refused(name, "bytes that are no text", e);
        }
    }

    /**
     * Returns the circuit that a text holds.
     *
     * @param name  that messages call it
     * @throws InputProblem when it is no circuit
     */
    public static Circuit parse(String name, String text) {
        try {
            return MAPPER.readValue(text, CircuitJson.class).circuit();
        } catch (JacksonException e) {
            String what = Objects.requireNonNullElse(e.getOriginalMessage(), "something else");
            throw refused(name, what.lines().findFirst().orElse("something else"), e);
        } catch (IllegalArgumentException e) {
            throw refused(name, Objects.requireNonNullElse(e.getMessage(), "other values"), e);
        }
    }

    private static InputProblem refused(String name, String found, Exception cause) {
        return InputProblem.in(name)
                .expected("a circuit kept with --save-circuit")
                .found(found)
                .advice("Keep the circuit again with --save-circuit from a recording made there.")
                .causedBy(cause);
    }
}
