package setwright.intake.mdf;

import java.util.Iterator;
import java.util.List;

/** The bytes of several pieces as one stream. */
final class DataStream {
    private final MdfFile file;
    private final Iterator<Piece> pieces;
    private PieceSource source = (into, from, length) -> {};
    private long leftInPiece;
    private long left;

    DataStream(MdfFile file, List<Piece> pieces) {
        this.file = file;
        this.pieces = pieces.iterator();
        this.left = DataPieces.length(file, pieces);
    }

    /** Returns how many bytes are still to come. */
    long left() {
        return left;
    }

    /** Fills a part of an array, as far as there are bytes. */
    int read(byte[] into, int from, int length) {
        int wanted = (int) Math.min(length, left);
        int done = 0;
        while (done < wanted) {
            while (leftInPiece == 0) {
                Piece piece = pieces.next();
                source = PieceSource.of(file, piece);
                leftInPiece = piece.length();
                endPiece();
            }
            int count = (int) Math.min(wanted - done, leftInPiece);
            source.read(into, from + done, count);
            leftInPiece -= count;
            done += count;
            endPiece();
        }
        left -= done;
        return done;
    }

    private void endPiece() {
        if (leftInPiece == 0) {
            source.finish();
        }
    }
}
