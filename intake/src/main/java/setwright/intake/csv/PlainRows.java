package setwright.intake.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntConsumer;
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
    /** Blocks that are parsed or wait for it: memory stays bounded. */
    private static final int AHEAD = 8;

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
            Optional<byte[]> first = skipped(in);
            if (first.isEmpty()) {
                return false;
            }
            Deque<ForkJoinTask<Optional<double[][]>>> parsing = new ArrayDeque<>();
            byte[] block = first.get();
            while (block.length > 0 || !parsing.isEmpty()) {
                if (block.length > 0) {
                    parsing.add(parse(block, parsing));
                    block = next(in);
                }
                if (parsing.size() == AHEAD
                        || block.length == 0
                        || parsing.element().isDone()) {
                    Optional<double[][]> parsed = parsing.remove().join();
                    if (parsed.isEmpty()) {
                        parsing.forEach(task -> task.cancel(false));
                        return false;
                    }
                    columns.add(parsed.get());
                    counted.accept((int) Math.min(columns.rows(), Integer.MAX_VALUE));
                }
            }
        }
        return columns.rows() > 0;
    }

    /** Parses a block beside, or here and now while others have enough to do. */
    private ForkJoinTask<Optional<double[][]>> parse(
            byte[] block, Collection<ForkJoinTask<Optional<double[][]>>> others) {
        ForkJoinTask<Optional<double[][]>> task = ForkJoinTask.adapt(() -> new PlainBlock(block, dialect).parse());
        long waiting = others.stream().filter(other -> !other.isDone()).count();
        if (waiting < 2L * ForkJoinPool.getCommonPoolParallelism()) {
            ForkJoinPool.commonPool().execute(task);
        } else {
            task.invoke();
        }
        return task;
    }

    /**
     * The first block behind the lines above the data, reading on as long as they last; nothing where a line may end as only the engine
     * knows.
     */
    private Optional<byte[]> skipped(InputStream in) throws IOException {
        int skip = dialect.firstDataLine() - 1;
        byte[] block = next(in);
        while (block.length > 0) {
            int from = 0;
            while (skip > 0 && from < block.length) {
                boolean lone = block[from] == '\r' && (from + 1 == block.length || block[from + 1] != '\n');
                if (lone) {
                    return Optional.empty();
                }
                skip -= block[from++] == '\n' ? 1 : 0;
            }
            if (from < block.length) {
                return Optional.of(Arrays.copyOfRange(block, from, block.length));
            }
            block = next(in);
        }
        return Optional.of(block);
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
