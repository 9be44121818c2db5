package setwright.intake.mdf;

import setwright.intake.problem.InputProblem;

/**
 * Unpacks a piece whose rows had become columns, and turns it back.
 *
 * <p>The whole piece has to be held. The standard advises pieces of at most 4 MB.
 *
 * <p><b>Source:</b> ASAM MDF 4, DZBLOCK, transposition: the whole rows of {@code dz_zip_parameter} bytes form a matrix that is
 * stored column by column; bytes after the last whole row follow as they are.
 */
final class TransposedSource implements PieceSource {
    /** One piece may take this share of the memory; half is kept for the table. */
    private static final int SHARE_OF_MEMORY = 8;

    private final byte[] columns;
    private final int rowBytes;
    private final int rows;
    private int position;

    TransposedSource(MdfFile file, Piece piece) {
        if (piece.length()
                > Math.min(Integer.MAX_VALUE - 8L, Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY)) {
            throw InputProblem.in(file.name())
                    .expected("packed pieces of a few megabytes (at byte " + piece.at() + ")")
                    .found("one of " + piece.length() / 1_000_000 + " MB")
                    .advice("Save the recording without transposition, or give the program more memory (-Xmx).")
                    .problem();
        }
        this.columns = new byte[(int) piece.length()];
        PieceSource packed = new InflatingSource(file, piece);
        packed.read(columns, 0, columns.length);
        packed.finish();
        this.rowBytes = piece.rowBytes();
        this.rows = columns.length / rowBytes;
    }

    @Override
    public void read(byte[] into, int from, int length) {
        int end = position + length;
        int at = from;
        if (position < rows * rowBytes) {
            at = matrix(into, from, Math.min(end, rows * rowBytes));
        }
        System.arraycopy(columns, position, into, at, end - position);
        position = end;
    }

    /** Moves bytes of the matrix until a position; whole rows column by column, as they are stored. */
    private int matrix(byte[] into, int from, int until) {
        int started = position % rowBytes;
        int at = started == 0 ? from : singly(into, from, Math.min(until, position - started + rowBytes));
        int count = (until - position) / rowBytes;
        int row = position / rowBytes;
        for (int column = 0; column < rowBytes && count > 0; column++) {
            int source = column * rows + row;
            int target = at + column;
            for (int i = 0; i < count; i++) {
                into[target] = columns[source + i];
                target += rowBytes;
            }
        }
        position += count * rowBytes;
        return singly(into, at + count * rowBytes, until);
    }

    /** Moves bytes of the matrix one by one until a position; for the parts of rows at both ends. */
    private int singly(byte[] into, int from, int until) {
        int at = from;
        while (position < until) {
            into[at++] = columns[position % rowBytes * rows + position / rowBytes];
            position++;
        }
        return at;
    }
}
