package setwright.app.export;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The forms that a table is written in. */
public enum Format {
    /** In the units that people read, or those that the user chose. */
    CSV,
    /** In SI units. */
    PARQUET,
    /** In SI units. */
    JSON;

    /** Returns the form that a file's ending names. */
    public static Optional<Format> of(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(format -> name.endsWith("." + format.word()))
                .findFirst();
    }

    /** Returns its word on the command line, which is also the ending of its files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
