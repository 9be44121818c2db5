package setwright.intake.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import setwright.intake.problem.InputProblem;
import setwright.intake.spill.Columns;
import setwright.intake.table.Numbers;

/*
 * Design note. What loggers write is almost always plain: numbers between delimiters, as many in each row. Such a file is cut here,
 * in blocks that end at the end of a line and are parsed side by side, at a tenth of what the SQL engine takes for it. Whatever is
 * not plain (a quote, a word that is no known sign for "no value", a row of another width) ends the attempt, and the engine
 * reads the file from its beginning: one meaning, two speeds. A test holds both to the same numbers.
 */

/** Reads the rows of a plain table of numbers, or says that it is not plain. */
final class PlainRows {
    private static final int BLOCK_BYTES = 1 << 22;
    /** Blocks that are read, then parsed at once: memory stays bounded. */
    private static final int BATCH = 8;

    private final String name;
    private final Path file;
    private final Dialect dialect;
    private final int blockBytes;
    private final IntConsumer counted;
    private final Columns columns;
    private byte[] rest = new byte[0];

    private PlainRows(String name, Path file, Dialect dialect, int blockBytes, IntConsumer counted) {
        this.name = name;
        this.file = file;
        this.dialect = dialect;
        this.blockBytes = blockBytes;
        this.counted = counted;
        this.columns = new Columns(dialect.headers().size(), Columns.USUAL_CELLS);
    }

    /**
     * Reads a table.
     *
     * @param counted  told how many rows there are so far; may refuse them by an exception
     * @return one per column, NaN where a cell says that it has no value; empty when the table is not plain
     * @throws InputProblem when a compressed file is damaged
     */
    static Optional<List<Numbers>> read(String name, Path file, Dialect dialect, IntConsumer counted) {
        return read(name, file, dialect, BLOCK_BYTES, counted);
    }

    /** The same with blocks of another size. */
    static Optional<List<Numbers>> read(String name, Path file, Dialect dialect, int blockBytes, IntConsumer counted) {
        boolean oneByte = dialect.charset().equals(StandardCharsets.UTF_8)
                || dialect.charset().name().equals("windows-1252");
        if (!oneByte || dialect.headers().size() < 2 || dialect.delimiter() == ' ') {
            return Optional.empty();
        }
        PlainRows rows = new PlainRows(name, file, dialect, blockBytes, counted);
        try {
            return rows.blocks() ? Optional.of(rows.columns.done()) : Optional.empty();
        } catch (IOException e) {
            if (dialect.gzip()) {
                throw Sample.damaged(name, e);
            }
            return Optional.empty(); // the engine says what is the matter with the file
        }
    }

    private boolean blocks() throws IOException {
        try (InputStream in = Sample.open(file, dialect.gzip())) {
            int skip = dialect.firstDataLine() - 1;
            boolean more = true;
            while (more) {
                List<byte[]> batch = new ArrayList<>();
                while (more && batch.size() < BATCH) {
                    byte[] block = next(in);
                    more = block.length > 0;
                    int from = 0;
                    while (skip > 0 && from < block.length) {
                        boolean lone = block[from] == '\r' && (from + 1 == block.length || block[from + 1] != '\n');
                        if (lone) {
                            return false; // a line may end so; the engine knows what to make of it
                        }
                        skip -= block[from++] == '\n' ? 1 : 0;
                    }
                    batch.add(from == 0 ? block : Arrays.copyOfRange(block, from, block.length));
                }
                List<Optional<double[][]>> parsed = IntStream.range(0, batch.size())
                        .parallel()
                        .mapToObj(k -> new PlainBlock(batch.get(k), dialect).parse())
                        .toList();
                for (Optional<double[][]> block : parsed) {
                    if (block.isEmpty()) {
                        return false;
                    }
                    columns.add(block.get());
                }
                counted.accept((int) Math.min(columns.rows(), Integer.MAX_VALUE));
            }
        }
        return columns.rows() > 0;
    }

    /**
     * The next whole lines; the start of a further one is kept for the next call. A line longer than a block ends up whole as well, unless
     * no row is so long: then there is no end of it in sight.
     */
    private byte[] next(InputStream in) throws IOException {
        byte[] block = Arrays.copyOf(rest, rest.length + blockBytes);
        int end = rest.length + in.readNBytes(block, rest.length, blockBytes);
        int cut = end;
        if (end == block.length) {
            while (cut > 0 && block[cut - 1] != '\n') {
                cut--;
            }
            if (cut == 0) {
                if (end > Sample.LONGEST_LINE) {
                    throw Sample.endless(name);
                }
                rest = block;
                return next(in);
            }
        }
        rest = Arrays.copyOfRange(block, cut, end);
        return cut == block.length ? block : Arrays.copyOf(block, cut);
    }
}
