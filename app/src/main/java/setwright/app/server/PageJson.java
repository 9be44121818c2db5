package setwright.app.server;

import io.javalin.http.BadRequestResponse;
import io.javalin.json.JsonMapper;
import java.lang.reflect.Type;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.ObjectMapper;

/** JSON for the page's own scripts; a request that lacks a field or has one too many is refused. */
final class PageJson implements JsonMapper {
    private static final ObjectMapper MAPPER = tools.jackson.databind.json.JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .build();

    @Override
    public String toJsonString(Object object, Type type) {
        return MAPPER.writeValueAsString(object);
    }

    @Override
    @SuppressWarnings("TypeParameterUnusedInFormals") // as the interface has it
    public <T> T fromJsonString(String json, Type type) {
        T value = MAPPER.readValue(json, MAPPER.constructType(type));
        if (value == null) {
            throw new BadRequestResponse("The request says nothing. Load the page again, then try once more.");
        }
        return value;
    }
}
