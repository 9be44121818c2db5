package setwright.intake.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import setwright.intake.csv.TextFormat;
import setwright.intake.mdf.MdfFormat;
import setwright.intake.parquet.ParquetFormat;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableFormat;
import setwright.intake.track.GpxFormat;
import setwright.intake.track.NmeaFormat;

/** The kinds of files that are understood, in the order in which they are tried. */
public final class Formats {
    /** The last takes what no other claims, and says what is wrong with it. */
    private static final List<TableFormat> ALL =
            List.of(new ParquetFormat(), new MdfFormat(), new GpxFormat(), new NmeaFormat(), new TextFormat());

    private Formats() {}

    /**
     * Reads a file of any known kind.
     *
     * @return one table for each time base, at least one
     * @throws InputProblem when it is missing, damaged, or holds no table of numbers
     */
    public static List<Table> read(Path file) {
        return of(file).read(file);
    }

    /** Returns the kind of a file, by its beginning. */
    public static TableFormat of(Path file) {
        byte[] head = head(file);
        return ALL.stream()
                .filter(format -> format.recognises(head))
                .findFirst()
                .orElse(ALL.get(ALL.size() - 1));
    }

    /** A file that cannot be read has an empty beginning; the reader of text says why. */
    private static byte[] head(Path file) {
        if (!Files.isRegularFile(file)) {
            return new byte[0];
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(TableFormat.HEAD_BYTES);
        } catch (IOException e) {
            return new byte[0];
        }
    }
}
