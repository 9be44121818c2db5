package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One block: a header of 24 bytes, then links, then data. It lies inside the file; its links are followed only through here,
 * where they are checked again.
 *
 * <p><b>Source:</b> ASAM MDF 4, general block structure: four letters, four reserved bytes, length of the whole block (UINT64),
 * number of links (UINT64), links (INT64 each, bytes from the beginning of the file, zero for none).
 */
final class Block {
    static final int HEADER_BYTES = 24;
    /** No link: there is nothing. */
    static final long NIL = 0;

    private static final int LINK_BYTES = 8;

    private final MdfFile file;
    private final long at;
    private final String id;
    private final long[] links;
    private final long dataAt;
    private final long dataLength;

    private Block(MdfFile file, long at, String id, long[] links, long length) {
        this.file = file;
        this.at = at;
        this.id = id;
        this.links = links;
        this.dataAt = at + HEADER_BYTES + (long) LINK_BYTES * links.length;
        this.dataLength = at + length - dataAt;
    }

    /**
     * Reads header and links.
     *
     * @param what  what the block is, for messages
     * @param ids   the pairs of letters that it may have, such as {@code DT}
     */
    static Block at(MdfFile file, long at, String what, String... ids) {
        if (at < Identification.BYTES || at > file.size() - HEADER_BYTES) {
            throw file.damaged(at, what, "a link to it, but only " + file.size() + " bytes in the file");
        }
        ByteBuffer header = file.description(at, HEADER_BYTES);
        byte[] letters = new byte[4];
        header.get(letters);
        String found = new String(letters, StandardCharsets.ISO_8859_1);
        if (!found.startsWith("##") || !List.of(ids).contains(found.substring(2))) {
            throw file.damaged(at, what, found.matches("##[A-Z]{2}") ? "a block " + found : "no block");
        }
        long length = header.getLong(8);
        long count = header.getLong(16);
        if (length < HEADER_BYTES || length > file.size() - at) {
            throw file.damaged(
                    at,
                    what + " of " + Long.toUnsignedString(length) + " bytes",
                    (file.size() - at) + " bytes to the end of the file");
        }
        if (count < 0 || count > (length - HEADER_BYTES) / LINK_BYTES || count > Integer.MAX_VALUE / LINK_BYTES) {
            throw file.damaged(
                    at, what + " whose links lie in its " + length + " bytes", Long.toUnsignedString(count) + " links");
        }
        // Read first: the description is refused before memory is taken for it.
        ByteBuffer stored = file.description(at + HEADER_BYTES, LINK_BYTES * (int) count);
        long[] links = new long[(int) count];
        stored.asLongBuffer().get(links);
        return new Block(file, at, found.substring(2), links, length);
    }

    /** Reads the blocks of a list, each of which links to the next by its first link. */
    static List<Block> chain(MdfFile file, long first, String what, String... ids) {
        List<Block> blocks = new ArrayList<>();
        long next = first;
        while (next != NIL) {
            file.claim(next);
            Block block = at(file, next, what, ids);
            blocks.add(block);
            next = block.link(0);
        }
        return blocks;
    }

    /** Returns where in the file it begins. */
    long at() {
        return at;
    }

    /** Returns its two letters. */
    String id() {
        return id;
    }

    int linkCount() {
        return links.length;
    }

    /** Returns a link that every block of this kind has. */
    long link(int index) {
        if (index >= links.length) {
            throw file.damaged(at, "a block " + id + " with " + (index + 1) + " links", links.length + " links");
        }
        return links[index];
    }

    /** Returns a link that blocks of this kind may have. */
    long linkOrNil(int index) {
        return index < links.length ? links[index] : NIL;
    }

    /** Returns where in the file its data begin. */
    long dataAt() {
        return dataAt;
    }

    /** Returns the length of its data, bytes. */
    long dataLength() {
        return dataLength;
    }

    /** Reads the first bytes of its data, little-endian; all of them must be there. */
    ByteBuffer data(long bytes) {
        if (bytes > dataLength || bytes > Integer.MAX_VALUE) {
            throw file.damaged(at, "a block " + id + " with " + bytes + " bytes of data", dataLength + " bytes");
        }
        return file.description(dataAt, (int) bytes);
    }
}
