package setwright.intake.table;

import java.nio.file.Path;
import java.util.List;

/** A kind of file that holds tables of numbers. To add one, write a class of this kind and name it in {@code intake.source.Formats}. */
public interface TableFormat {
    /** How many bytes of a file's beginning {@link #recognises} is given, or all if there are fewer. */
    int HEAD_BYTES = 4096;

    /** Returns what messages call it, such as {@code a Parquet file}. */
    String words();

    /**
     * Tells whether a file is of this kind.
     *
     * @param head  the first {@link #HEAD_BYTES} bytes of the file, or all of it
     */
    boolean recognises(byte[] head);

    /**
     * Reads a file.
     *
     * @return one table for each time base; all tell the time in one clock, and each has a column of it
     * @throws setwright.intake.problem.InputProblem when the file is damaged, or holds no table of numbers
     */
    List<Table> read(Path file);
}
