package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the data of a data group lie, in the order in which they belong together.
 *
 * <p><b>Source:</b> ASAM MDF 4, DGBLOCK ({@code dg_data}), DLBLOCK (list of fragments with equal length or offsets), HLBLOCK (head
 * of a list of packed fragments), and since version 4.20 LDBLOCK (values, and apart from them their invalidation bytes).
 *
 * @param values   of records with their invalidation bytes, or without when these are apart
 * @param invalid  the invalidation bytes when they are apart
 * @param apart    tells whether they are
 */
record DataPieces(List<Piece> values, List<Piece> invalid, boolean apart) {
    /** At half a gigabyte a second, what is read in a minute; no recording of laps comes near. */
    private static final long MOST_BYTES = 32L << 30;

    private static final int LIST_HEADER_BYTES = 8;
    private static final int EQUAL_LENGTH = 1;
    /** {@code ld_flags} bit 31. */
    private static final int INVALIDATION = 1 << 31;

    DataPieces {
        values = List.copyOf(values);
        invalid = List.copyOf(invalid);
    }

    /** Finds the pieces behind the link of a data group. */
    static DataPieces of(MdfFile file, long link) {
        if (link == Block.NIL) {
            return new DataPieces(List.of(), List.of(), false);
        }
        Block block = Block.at(file, link, "data", "DT", "DV", "DZ", "DL", "LD", "HL");
        if (block.id().equals("HL")) {
            file.claim(link);
            block = Block.at(file, block.link(0), "a list of data", "DL", "LD");
        }
        return switch (block.id()) {
            case "DL" -> list(file, block.at());
            case "LD" -> columnList(file, block.at());
            case "DV" -> new DataPieces(List.of(claimed(file, block.at(), "DV")), List.of(), true);
            case "DZ" ->
                new DataPieces(
                        List.of(claimed(file, block.at(), Piece.isKind(block, "DV") ? "DV" : "DT")),
                        List.of(),
                        Piece.isKind(block, "DV"));
            default -> new DataPieces(List.of(claimed(file, block.at(), "DT")), List.of(), false);
        };
    }

    /** Returns how many bytes pieces hold when unpacked. */
    static long length(MdfFile file, List<Piece> pieces) {
        long sum = 0;
        for (Piece piece : pieces) {
            sum += piece.length();
            if (sum > MOST_BYTES) {
                throw file.damaged(piece.at(), "at most 32 GB of data", "more");
            }
        }
        return sum;
    }

    private static Piece claimed(MdfFile file, long link, String kind) {
        file.claim(link);
        return Piece.of(file, Block.at(file, link, "data", kind, "DZ"), kind);
    }

    private static DataPieces list(MdfFile file, long first) {
        List<Piece> pieces = new ArrayList<>();
        long offset = 0;
        boolean shorter = false;
        for (Block list : Block.chain(file, first, "a list of data", "DL")) {
            int count = count(file, list, list.data(LIST_HEADER_BYTES), 1);
            boolean isEqual = (list.data(1).get(0) & EQUAL_LENGTH) != 0;
            ByteBuffer fields = list.data(LIST_HEADER_BYTES + 8L * (isEqual ? 1 : count));
            for (int i = 0; i < count; i++) {
                Piece piece = claimed(file, list.link(1 + i), "DT");
                long said = fields.getLong(LIST_HEADER_BYTES + (isEqual ? 0 : 8 * i));
                // Of pieces of equal length only the very last may be shorter.
                if (shorter || (isEqual ? piece.length() > said : said != offset)) {
                    throw file.damaged(
                            list.at(), "pieces of data as long as their list says", "others in place " + (i + 1));
                }
                shorter = isEqual && piece.length() < said;
                offset += piece.length();
                pieces.add(piece);
            }
        }
        return new DataPieces(pieces, List.of(), false);
    }

    private static DataPieces columnList(MdfFile file, long first) {
        List<Piece> values = new ArrayList<>();
        List<Piece> invalid = new ArrayList<>();
        for (Block list : Block.chain(file, first, "a list of data", "LD")) {
            ByteBuffer fields = list.data(LIST_HEADER_BYTES);
            boolean both = (fields.getInt(0) & INVALIDATION) != 0;
            int count = count(file, list, fields, both ? 2 : 1);
            for (int i = 0; i < count; i++) {
                values.add(claimed(file, list.link(1 + i), "DV"));
            }
            for (int i = 0; both && i < count; i++) {
                invalid.add(claimed(file, list.link(1 + count + i), "DI"));
            }
        }
        return new DataPieces(values, invalid, true);
    }

    /** The count of fragments, which must be that of the links after the first. */
    private static int count(MdfFile file, Block list, ByteBuffer fields, int linksEach) {
        long count = fields.getInt(4) & 0xFFFF_FFFFL;
        if (count * linksEach != list.linkCount() - 1) {
            throw file.damaged(
                    list.at(),
                    "a list with " + count * linksEach + " links to data",
                    (list.linkCount() - 1) + " links");
        }
        return (int) count;
    }
}
