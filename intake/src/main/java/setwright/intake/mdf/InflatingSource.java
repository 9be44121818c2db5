package setwright.intake.mdf;

import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Unpacks a piece as it is asked for, with a window of packed bytes only. */
final class InflatingSource implements PieceSource {
    private static final int WINDOW_BYTES = 1 << 16;

    private final MdfFile file;
    private final Piece piece;
    private final Inflater inflater = new Inflater();
    private final byte[] window;
    private long taken;

    InflatingSource(MdfFile file, Piece piece) {
        this.file = file;
        this.piece = piece;
        this.window = new byte[(int) Math.min(WINDOW_BYTES, piece.stored())];
    }

    @Override
    public void read(byte[] into, int from, int length) {
        int done = 0;
        while (done < length) {
            int count = inflate(into, from + done, length - done);
            if (count == 0 && !refill()) {
                throw damaged("fewer");
            }
            done += count;
        }
    }

    /** The stream must end where its length says; its checksum is tested on the way. */
    @Override
    public void finish() {
        byte[] one = new byte[1];
        while (!inflater.finished()) {
            if (inflate(one, 0, 1) > 0) {
                throw damaged("more");
            }
            if (!inflater.finished() && !refill()) {
                throw damaged("a stream without an end");
            }
        }
        inflater.end();
    }

    private int inflate(byte[] into, int from, int length) {
        try {
            return inflater.inflate(into, from, length);
        } catch (DataFormatException e) {
            inflater.end();
            throw file.damaged(piece.at(), "packed data", "bytes that cannot be unpacked", e);
        }
    }

    private boolean refill() {
        int count = (int) Math.min(window.length, piece.stored() - taken);
        if (count == 0 || inflater.finished() || inflater.needsDictionary() || !inflater.needsInput()) {
            return false;
        }
        file.read(piece.at() + taken, window, 0, count);
        taken += count;
        inflater.setInput(window, 0, count);
        return true;
    }

    private RuntimeException damaged(String found) {
        inflater.end();
        return file.damaged(piece.at(), piece.length() + " bytes when unpacked", found);
    }
}
