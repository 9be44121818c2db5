package setwright.app.logbook;

import java.util.List;
import setwright.app.evidence.ChannelNote;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** How the columns of a recording were understood, as text in the logbook. */
final class KeptNotes {
    private static final JsonMapper MAPPER = JsonMapper.shared();

    private KeptNotes() {}

    static String write(List<ChannelNote> notes) {
        return MAPPER.writeValueAsString(notes);
    }

    static List<ChannelNote> read(String text) {
        return MAPPER.readValue(text, new TypeReference<List<ChannelNote>>() {});
    }
}
