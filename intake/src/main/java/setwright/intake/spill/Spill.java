package setwright.intake.spill;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.HeldNumbers;
import setwright.intake.table.Numbers;

/**
 * Columns in a temporary file, block by block, each block column by column. The file has no name once it is open (on systems that
 * allow it), and goes when nobody holds its columns any more or the program ends.
 */
final class Spill {
    private final FileChannel channel;
    private final long[] finite;
    /** First row of each block, and of the one that would follow. */
    private final List<Integer> starts = new ArrayList<>(List.of(0));

    private Spill(FileChannel channel, int width) {
        this.channel = channel;
        this.finite = new long[width];
    }

    static Spill begin(int width) {
        try {
            Path file = Files.createTempFile("setwright", ".columns");
            return new Spill(
                    FileChannel.open(
                            file,
                            StandardOpenOption.READ,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.DELETE_ON_CLOSE),
                    width);
        } catch (IOException e) {
            throw full(e);
        }
    }

    private static InputProblem full(IOException e) {
        return InputProblem.in(System.getProperty("java.io.tmpdir", "the folder for temporary files"))
                .expected("room for the numbers of a long recording")
                .found("none (" + e.getMessage() + ")")
                .advice(
                        "Make room there, or name another folder for temporary files: SETWRIGHT_JAVA_OPTS=-Djava.io.tmpdir=FOLDER.")
                .causedBy(e);
    }

    void add(double[][] block) {
        int count = block[0].length;
        ByteBuffer bytes = buffer(count);
        try {
            for (int c = 0; c < block.length; c++) {
                bytes.clear();
                bytes.asDoubleBuffer().put(block[c]);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                finite[c] += HeldNumbers.finite(block[c]);
            }
        } catch (IOException e) {
            throw full(e);
        }
        starts.add(Math.addExact(rows(), count));
    }

    private static ByteBuffer buffer(int count) {
        return ByteBuffer.allocate(count * Double.BYTES).order(ByteOrder.nativeOrder());
    }

    private int rows() {
        return starts.get(starts.size() - 1);
    }

    List<Numbers> columns() {
        return IntStream.range(0, finite.length)
                .mapToObj(column -> (Numbers) new SpilledNumbers(this, column, 0, rows(), finite[column]))
                .toList();
    }

    /** Reads a part of a column; any number of threads may. */
    double[] read(int column, int from, int to) {
        double[] values = new double[to - from];
        int at = from;
        int block = block(from);
        try {
            while (at < to) {
                int start = starts.get(block);
                int count = starts.get(block + 1) - start;
                int end = Math.min(to, start + count);
                long place = ((long) start * finite.length + (long) column * count + (at - start)) * Double.BYTES;
                ByteBuffer bytes = buffer(end - at);
                while (bytes.hasRemaining()) {
                    if (channel.read(bytes, place + bytes.position()) < 0) {
                        throw new IOException("the file of numbers was cut");
                    }
                }
                bytes.flip();
                DoubleBuffer numbers = bytes.asDoubleBuffer();
                numbers.get(values, at - from, end - at);
                at = end;
                block++;
            }
        } catch (IOException e) {
            throw InputProblem.in(System.getProperty("java.io.tmpdir", "the folder for temporary files"))
                    .expected("the numbers of a long recording, as they were put there")
                    .found("nothing that can be read (" + e.getMessage() + ")")
                    .advice("Check the disk, and read the recording again.")
                    .causedBy(e);
        }
        return values;
    }

    private int block(int row) {
        int low = 0;
        int high = starts.size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (starts.get(middle) <= row) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
