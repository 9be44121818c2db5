package setwright.intake.track;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableFormat;

/** Sentences of a satellite receiver as NMEA 0183 has them, one a line; RMC, GGA and VTG are read, all others passed over. */
public final class NmeaFormat implements TableFormat {
    /** One sentence in so many may be torn; more, and the recording is not to be trusted. */
    private static final double MOST_TORN = 0.5;

    @Override
    public String words() {
        return "sentences of a satellite receiver (NMEA 0183)";
    }

    @Override
    public boolean recognises(byte[] head) {
        List<String> lines = Arrays.asList(new String(head, StandardCharsets.ISO_8859_1).split("\r?\n", -1));
        // The first line may be torn, the last is cut.
        List<String> whole = lines.size() > 2 ? lines.subList(1, lines.size() - 1) : lines;
        long filled = whole.stream().filter(line -> !line.isBlank()).count();
        long sentences = whole.stream().filter(NmeaFormat::isAddressed).count();
        return sentences > 0 && 2 * sentences > filled;
    }

    private static boolean isAddressed(String line) {
        return line.strip().matches("\\$[A-Z]{2}[A-Z]{3},.*|\\$P[A-Z0-9]{3,},.*");
    }

    @Override
    public List<Table> read(Path file) {
        String name = String.valueOf(file.getFileName());
        Sentences sentences = new Sentences(new Fixes(name, "sentences"));
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            BoundedLines lines = new BoundedLines(in);
            for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                sentences.take(line.get());
            }
        } catch (IOException e) {
            throw InputProblem.in(name)
                    .expected("a file that can be read")
                    .found(e.getClass().getSimpleName())
                    .advice("Check the disk.")
                    .causedBy(e);
        }
        if (sentences.torn() > MOST_TORN * sentences.met()) {
            throw InputProblem.in(name)
                    .expected("sentences whose check sums agree")
                    .found(sentences.torn() + " of " + sentences.met() + " that are torn")
                    .advice("Check the line between receiver and logger, and record again.")
                    .problem();
        }
        Table table = sentences.done();
        return List.of(
                sentences.torn() == 0
                        ? table
                        : new Table(
                                name,
                                table.columns(),
                                table.firstRow(),
                                List.of("Left out of " + name + ": " + sentences.torn() + " of " + sentences.met()
                                        + " sentences, whose check sums do not agree or whose time runs back.")));
    }
}
