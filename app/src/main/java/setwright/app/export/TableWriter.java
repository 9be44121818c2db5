package setwright.app.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import setwright.app.files.WholeFile;
import setwright.app.units.UnitSystem;

/**
 * Writes a table in a form.
 *
 * @param table     which
 * @param material  what it is made from
 * @param format    in which form
 * @param units     that CSV has; the other forms are in SI units always
 */
public record TableWriter(Table<?> table, Material material, Format format, UnitSystem units) {

    /**
     * Writes a file, whole or not at all; one of that name is replaced.
     *
     * @return how many rows it has
     * @throws IOException when it cannot be written
     */
    public long write(Path file) throws IOException {
        WholeFile.check(file);
        Path target = file.toAbsolutePath();
        long[] rows = {0};
        WholeFile.write(Objects.requireNonNull(target.getParent(), "a file that was checked has a folder"), aside -> {
            rows[0] = aside(aside);
            return String.valueOf(target.getFileName());
        });
        return rows[0];
    }

    private long aside(Path file) throws IOException {
        if (format == Format.PARQUET) {
            return ParquetForm.write(file, table, material);
        }
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            return write(out);
        }
    }

    /**
     * Writes text, which is left open.
     *
     * @return how many rows it has
     * @throws IOException when it cannot be written
     * @throws IllegalStateException for Parquet, which is no text
     */
    public long write(Writer out) throws IOException {
        return switch (format) {
            case CSV -> CsvForm.write(out, table, material, units);
            case JSON -> JsonForm.write(out, table, material);
            case PARQUET -> throw new IllegalStateException("Parquet is no text");
        };
    }
}
