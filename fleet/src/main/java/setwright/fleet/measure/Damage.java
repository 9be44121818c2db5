package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;

/** Ways in which recordings come broken. */
public enum Damage {
    /** A Parquet file whose end is missing. */
    CUT_PARQUET("cut.parquet"),
    /** Words where numbers should be. */
    WORDS("words.csv"),
    /** Nothing at all. */
    EMPTY("empty.csv"),
    /** Good laps without a car sheet. */
    NO_SHEET("laps.csv"),
    /** A second of driving. */
    SHORT("short.csv");

    /** All ways, in order. */
    static final List<Damage> ALL = List.copyOf(EnumSet.allOf(Damage.class));

    private final String file;

    Damage(String file) {
        this.file = file;
    }

    /** Returns the name of the file. */
    String file() {
        return file;
    }

    /** Writes a file that is broken in this way. */
    void write(Path target, NoisyTable laps) throws IOException {
        switch (this) {
            case CUT_PARQUET -> {
                laps.writeParquet(target);
                byte[] whole = Files.readAllBytes(target);
                Files.write(target, Arrays.copyOf(whole, whole.length / 2));
            }
            case WORDS -> Files.writeString(target, "the driver was content\nand the car as well\n");
            case EMPTY -> Files.write(target, new byte[0]);
            case NO_SHEET -> laps.writeCsv(target);
            case SHORT -> {
                laps.writeCsv(target);
                Files.write(target, Files.readAllLines(target).subList(0, 50));
            }
        }
    }
}
