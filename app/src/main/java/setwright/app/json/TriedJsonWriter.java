package setwright.app.json;

import static setwright.app.json.Numbers.known;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** Writes what was tried as JSON of version 1: docs/trial-tried.schema.json. */
public final class TriedJsonWriter {
    private static final int VERSION = 1;

    private TriedJsonWriter() {}

    record Document(int version, List<Trial> trials) {}

    record Trial(
            long trial,
            String car,
            String change,
            String together,
            String plan,
            Instant opened,
            Optional<String> verdict,
            Optional<String> reason,
            List<Effect> effects) {}

    record Effect(
            String what,
            Optional<String> phase,
            Optional<String> speed,
            String unit,
            OptionalDouble predicted,
            @JsonProperty("predicted_low") OptionalDouble predictedLow,
            @JsonProperty("predicted_high") OptionalDouble predictedHigh,
            OptionalDouble measured,
            @JsonProperty("measured_low") OptionalDouble measuredLow,
            @JsonProperty("measured_high") OptionalDouble measuredHigh) {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(List<Tried> tried) {
        return Numbers.text(
                new Document(VERSION, tried.stream().map(TriedJsonWriter::trial).toList()));
    }

    private static Trial trial(Tried tried) {
        return new Trial(
                tried.trial().id(),
                tried.car().name(),
                tried.trial().changeWords(),
                tried.trial().together(),
                tried.trial().plan(),
                tried.trial().openedAt(),
                tried.verdict().map(VerdictRow::verdict),
                tried.verdict().map(VerdictRow::reason),
                tried.effects().stream().map(TriedJsonWriter::effect).toList());
    }

    private static Effect effect(TriedEffectRow row) {
        boolean angle = row.unit().equals("rad");
        double scale = angle ? Math.toDegrees(1.0) : 1.0;
        return new Effect(
                angle ? "balance" : "lap time",
                some(row.phase()),
                some(row.speed()),
                angle ? "deg" : "s",
                scaled(row.predicted(), scale),
                scaled(row.predictedLow(), scale),
                scaled(row.predictedHigh(), scale),
                known(scale * row.measured()),
                known(scale * row.measuredLow()),
                known(scale * row.measuredHigh()));
    }

    private static Optional<String> some(String text) {
        return Optional.of(text).filter(words -> !words.isEmpty());
    }

    private static OptionalDouble scaled(OptionalDouble value, double scale) {
        return value.isPresent() ? known(scale * value.getAsDouble()) : value;
    }
}
