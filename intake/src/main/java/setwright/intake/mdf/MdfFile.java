package setwright.intake.mdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;
import setwright.intake.problem.InputProblem;

/**
 * An open measurement file: reads that never leave it, and the words for what is wrong at one of its bytes.
 *
 * <p>Nothing is mapped or held; whoever reads brings the memory.
 */
final class MdfFile implements AutoCloseable {
    /**
     * What is kept of names and structure takes a few times the room it has in the file, so this share of the memory for the
     * latter leaves most for the data. A channel takes some three hundred bytes.
     */
    private static final int SHARE_OF_MEMORY = 16;

    private static final String DAMAGED = "The file is damaged or was cut short: copy it from the logger again.";

    private final String name;
    private final FileChannel channel;
    private final long size;
    private final Set<Long> claimed = new HashSet<>();
    private long described;

    private MdfFile(String name, FileChannel channel, long size) {
        this.name = name;
        this.channel = channel;
        this.size = size;
    }

    static MdfFile open(Path file) {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw InputProblem.in(name)
                    .expected("a measurement file")
                    .found("no such file")
                    .advice("Check the name.")
                    .problem();
        }
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
            return new MdfFile(name, channel, channel.size());
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    /** Returns the name without folders. */
    String name() {
        return name;
    }

    /** Returns the length of the file, bytes. */
    long size() {
        return size;
    }

    /**
     * Reads a piece of the description of the data, not of the data itself.
     *
     * @return little-endian, as all numbers outside of records are
     */
    ByteBuffer description(long at, int length) {
        described += length;
        if (described > Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY) {
            throw InputProblem.in(name)
                    .expected("names and structure of channels that fit into memory")
                    .found("more than " + described / 1_000_000 + " MB of them (at byte " + at + ")")
                    .advice("Save fewer channels or shorter recordings, or give the program more memory (-Xmx).")
                    .problem();
        }
        byte[] bytes = new byte[length];
        read(at, bytes, 0, length);
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Reads {@code length} bytes from {@code at} into an array, all of them. */
    void read(long at, byte[] into, int from, int length) {
        if (at < 0 || length < 0 || at > size - length) {
            throw damaged(at, length + " bytes", "the end of the file");
        }
        ByteBuffer buffer = ByteBuffer.wrap(into, from, length);
        long position = at;
        try {
            while (buffer.hasRemaining()) {
                int count = channel.read(buffer, position);
                if (count < 0) {
                    throw damaged(position, "more bytes", "the end of the file");
                }
                position += count;
            }
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    /** Notes that a block has its one owner; a second link to it would make a loop or read its data twice. */
    void claim(long at) {
        if (!claimed.add(at)) {
            throw damaged(at, "a block with one link to it", "a second link");
        }
    }

    /** Makes the problem of a file that breaks the standard at a byte. */
    InputProblem damaged(long at, String expected, String found) {
        return damage(at, expected, found).problem();
    }

    /** Makes the problem of a file that breaks the standard at a byte, and keeps what told so. */
    InputProblem damaged(long at, String expected, String found, Throwable cause) {
        return damage(at, expected, found).causedBy(cause);
    }

    private InputProblem.Builder damage(long at, String expected, String found) {
        return InputProblem.in(name)
                .expected(expected + " at byte " + Long.toUnsignedString(at))
                .found(found)
                .advice(DAMAGED);
    }

    private static InputProblem unreadable(String name, IOException cause) {
        return InputProblem.in(name)
                .expected("a readable file")
                .found(cause.getClass().getSimpleName())
                .advice("Check the disk and the rights of the file.")
                .causedBy(cause);
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }
}
