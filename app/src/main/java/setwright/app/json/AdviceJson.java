package setwright.app.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Advice from evidence other than balance, and what was looked at without. */
record AdviceJson(List<Given> given, List<Silent> silent) {

    record Given(
            String topic,
            String what,
            List<String> evidence,
            List<String> cautions,
            List<Integer> laps,
            List<Integer> corners,
            Optional<Move> move,
            Map<String, OptionalDouble> figures) {}

    record Move(String item, double from, double to, String unit) {}

    record Silent(String topic, boolean recorded, String why) {}
}
