package setwright.fleet.summary;

import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes a summary as JSON of version 1: docs/fleet-summary.schema.json. */
public final class SummaryJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .build();

    private SummaryJson() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(Summary summary) {
        return MAPPER.writeValueAsString(summary) + "\n";
    }
}
