package setwright.logbook.row;

import java.time.Instant;

/**
 * A recording that came in.
 *
 * @param name          of the file it came from
 * @param sourceDigest  SHA-256 of that file, unique
 * @param file          that holds its channels, named from the folder of recordings
 * @param fileDigest    SHA-256 of it
 * @param rateHz        samples per second
 * @param samples       of each channel
 * @param channels      how each column of the file was understood, JSON
 * @param remarks       what was understood or put aside on the way in, one a line
 */
public record RecordingRow(
        long id,
        String name,
        String sourceDigest,
        String file,
        String fileDigest,
        double rateHz,
        long samples,
        String channels,
        String remarks,
        Instant addedAt) {
    /** Returns the same from a file of another digest. */
    public RecordingRow from(String digest) {
        return new RecordingRow(id, name, digest, file, fileDigest, rateHz, samples, channels, remarks, addedAt);
    }
}
