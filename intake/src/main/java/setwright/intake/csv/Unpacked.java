package setwright.intake.csv;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import setwright.intake.problem.InputProblem;

/** What comes out of a packed file, as long as it is no more than a recording packs: a small file must not keep anybody busy for minutes. */
final class Unpacked extends FilterInputStream {
    /** Recordings pack to a fifth or a tenth, channels that never change to a hundredth; the method itself ends at 1032 (RFC 1951). */
    private static final long MOST_TIMES = 200;
    /** Below this nobody is kept busy. */
    private static final long HARMLESS_BYTES = 32L << 20;

    private final String name;
    private final long most;
    private long count;

    Unpacked(String name, InputStream in, long packedBytes) {
        super(in);
        this.name = name;
        this.most = Math.max(HARMLESS_BYTES, MOST_TIMES * packedBytes);
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        counted(read < 0 ? 0 : 1);
        return read;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int read = super.read(into, from, length);
        counted(Math.max(0, read));
        return read;
    }

    private void counted(int more) {
        count += more;
        if (count > most) {
            throw InputProblem.in(name)
                    .expected("a recording")
                    .found("a packed file that holds more than " + MOST_TIMES + " times its size")
                    .advice("Give the file as it is, not packed.")
                    .problem();
        }
    }
}
