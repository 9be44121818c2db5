package setwright.app.export;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import setwright.app.evidence.Answer;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.core.proposal.Proposal;

/**
 * What tables are made from.
 *
 * @param laps   judged recordings or stints, in the order asked for
 * @param tried  changes that were tried
 */
public record Material(List<Laps> laps, List<Tried> tried) {
    public Material {
        laps = List.copyOf(laps);
        tried = List.copyOf(tried);
    }

    /** Judged laps. */
    public static Material of(List<Laps> laps) {
        return new Material(laps, List.of());
    }

    /** What was tried. */
    public static Material tried(List<Tried> tried) {
        return new Material(List.of(), tried);
    }

    /**
     * One recording or stint.
     *
     * @param stint     what people call it
     * @param answer    the laps judged
     * @param proposal  what is proposed after them; empty where nobody asked
     */
    public record Laps(String stint, Answer answer, Optional<Proposal> proposal) {}

    /**
     * Something of a recording or stint.
     *
     * @param stint  what people call it
     * @param value  a lap, a pass, a finding
     */
    record Of<T>(String stint, T value) {}

    /** Returns something of every recording, in order. */
    <T> Stream<Of<T>> each(Function<Laps, Stream<T>> part) {
        return laps.stream().flatMap(one -> part.apply(one).map(value -> new Of<>(one.stint(), value)));
    }

    /** Returns the column that says where a row comes from. */
    static <T> Column<Of<T>> stint() {
        return Column.text("stint", "file or number of the stint in the logbook", Of::stint);
    }
}
