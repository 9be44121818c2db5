package setwright.intake.mdf;

/** Gives the bytes of one {@link Piece} in their order, each once. */
interface PieceSource {
    /** Fills a part of an array; the caller never asks for more than the piece holds. */
    void read(byte[] into, int from, int length);

    /** Ends a piece that was read to its end; says so when there is more in it than it claims. */
    default void finish() {}

    /** Opens a piece. */
    static PieceSource of(MdfFile file, Piece piece) {
        return switch (piece.packing()) {
            case PLAIN ->
                new PieceSource() {
                    private long position = piece.at();

                    @Override
                    public void read(byte[] into, int from, int length) {
                        file.read(position, into, from, length);
                        position += length;
                    }
                };
            case DEFLATED -> new InflatingSource(file, piece);
            case TRANSPOSED -> new TransposedSource(file, piece);
        };
    }
}
