package setwright.app.scoreboard;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Corners with the right number, direction and apex. */
final class CornerRule implements Rule {
    @Override
    public List<Row> judge(StintRun run) {
        CornerMatch match = run.cornerMatch();
        int corners = run.practice().truth().corners().size();
        int found = run.stint().map(stint -> stint.circuit().corners().size()).orElse(0);
        Set<Integer> extra = match.extra();
        String answer = run.stint().isEmpty() ? "none" : found + " corners";
        if (run.stint().isPresent() && !match.misses().isEmpty()) {
            answer += "; " + match.misses();
        }
        if (!extra.isEmpty()) {
            answer += "; no corner: " + Words.numbers(extra);
        }
        Map<Measure, Count> counts = new EnumMap<>(Measure.class);
        counts.put(Measure.CORNERS, new Count(match.inPlace().size(), corners));
        counts.put(Measure.EXTRA_CORNERS, new Count(extra.size(), found));
        return List.of(new Row("corners", corners + " corners", answer, counts));
    }
}
