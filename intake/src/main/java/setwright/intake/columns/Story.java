package setwright.intake.columns;

import java.util.List;
import setwright.core.recording.Calibration;
import setwright.core.recording.Recording;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a recording is besides its samples, version 1.
 *
 * @param version       of this shape
 * @param name          of the recording
 * @param rateHz        samples per second
 * @param samples       of each channel
 * @param calibrations  what was corrected on the way in
 */
record Story(int version, String name, double rateHz, int samples, List<Calibration> calibrations) {
    private static final int VERSION = 1;
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .build();

    static Story of(Recording recording) {
        return new Story(
                VERSION, recording.name(), recording.sampleRateHz(), recording.sampleCount(), recording.calibrations());
    }

    String json() {
        return MAPPER.writeValueAsString(this);
    }

    static Story read(byte[] json) {
        try {
            Story story = MAPPER.readValue(json, Story.class);
            if (story.version() != VERSION || story.samples() < 0) {
                throw new IllegalArgumentException("version " + story.version() + " instead of " + VERSION);
            }
            return story;
        } catch (JacksonException e) {
            throw new IllegalArgumentException("what is said of it cannot be read", e);
        }
    }
}
