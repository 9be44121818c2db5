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
        WholeFile.write(file, MAPPER.writeValueAsString(CircuitJson.of(circuit)) + "\n");
    }

    /**
     * Reads a circuit.
     *
     * @throws IOException when the file cannot be read
     * @throws InputProblem when it is no circuit file
     */
    public static Circuit read(Path file) throws IOException {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw refused(file, "a file of " + Files.size(file) + " bytes", new IOException("too large"));
            }
            return MAPPER.readValue(Files.readString(file), CircuitJson.class).circuit();
        } catch (CharacterCodingException e) {
            throw refused(file, "bytes that are no text", e);
        } catch (JacksonException e) {
            String what = Objects.requireNonNullElse(e.getOriginalMessage(), "something else");
            throw refused(file, what.lines().findFirst().orElse("something else"), e);
        } catch (IllegalArgumentException e) {
            throw refused(file, Objects.requireNonNullElse(e.getMessage(), "other values"), e);
        }
    }

    private static InputProblem refused(Path file, String found, Exception cause) {
        return InputProblem.in(String.valueOf(file.getFileName()))
                .expected("a circuit kept with --save-circuit")
                .found(found)
                .advice("Keep the circuit again with --save-circuit from a recording made there.")
                .causedBy(cause);
    }
}
