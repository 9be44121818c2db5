package setwright.fleet.depot;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Files below one root, named by what stands below it, parts separated by {@code /}. Threads may share it. */
public interface Depot {
    /** Returns the address of the root. */
    String root();

    /**
     * Lists all files below a folder, also hidden ones, sorted by name.
     *
     * @param folder  below the root; empty for the root itself. A missing one holds nothing
     * @throws IOException when a folder cannot be read
     */
    List<Listed> list(String folder) throws IOException;

    /** Tells whether there is such a file or folder. */
    boolean has(String name) throws IOException;

    /** Returns what a file holds. */
    byte[] read(String name) throws IOException;

    /**
     * Returns a file on this machine that holds the same.
     *
     * @param folder  takes a copy, under the file's own name, when it does not lie on this machine already
     */
    Path local(String name, Path folder) throws IOException;

    /** Puts a file there, whole or not at all; one of that name is replaced. */
    void put(Path file, String name) throws IOException;

    /** Puts bytes there, whole or not at all; a file of that name is replaced. */
    void put(byte[] bytes, String name) throws IOException;

    /** Deletes a file, or a folder with all that is in it; nothing happens when there is none. */
    void delete(String name) throws IOException;

    /**
     * Keeps others from working here until it is closed.
     *
     * @param name   of the file that says who is at work
     * @param owner  who is, in words
     * @throws IOException when somebody else is, saying who
     */
    Hold hold(String name, String owner) throws IOException;

    /** Something that is kept until it is closed. */
    interface Hold extends AutoCloseable {
        @Override
        void close() throws IOException;
    }
}
