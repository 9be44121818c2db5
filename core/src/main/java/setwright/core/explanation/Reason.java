package setwright.core.explanation;

import java.util.List;
import java.util.Optional;

/**
 * One link of the chain.
 *
 * @param kind      what it speaks of
 * @param sentence  for people: short, with its figures
 * @param figures   the same for programs
 * @param laps      lap numbers that it rests on, ascending; empty when it is not about laps
 * @param corners   corner numbers, ascending; empty when it is not about corners
 * @param proof     where to look to see it; empty when no one place shows it
 */
public record Reason(
        Kind kind,
        String sentence,
        List<Figure> figures,
        List<Integer> laps,
        List<Integer> corners,
        Optional<Proof> proof) {
    public Reason {
        figures = List.copyOf(figures);
        laps = List.copyOf(laps);
        corners = List.copyOf(corners);
    }

    static Reason of(Kind kind, String sentence, Figure... figures) {
        return new Reason(kind, sentence, List.of(figures), List.of(), List.of(), Optional.empty());
    }

    Reason on(List<Integer> newLaps, List<Integer> newCorners, Optional<Proof> newProof) {
        return new Reason(kind, sentence, figures, newLaps, newCorners, newProof);
    }

    /** What a reason speaks of. */
    public enum Kind {
        LAPS("laps"),
        CORNERS("corners"),
        TRIGGER("trigger"),
        AXLE("axle"),
        SETUP("setup"),
        DRIVING("driving"),
        PRICE("price"),
        CERTAINTY("certainty"),
        LOOKED_AT("looked at"),
        MOST_SEEN("most seen"),
        WHY_NOT("why not"),
        TO_SETTLE("to settle");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }

    /**
     * One figure.
     *
     * @param name   what it is
     * @param value  in {@code unit}
     * @param low    lower end of its 95 % interval, of a price 90 %; NaN where there is none
     * @param high   upper end; NaN likewise
     * @param unit   such as {@code deg}, {@code laps}; empty for shares and probabilities
     */
    public record Figure(String name, double value, double low, double high, String unit) {
        static Figure of(String name, double value, String unit) {
            return new Figure(name, value, Double.NaN, Double.NaN, unit);
        }
    }

    /**
     * A place that shows it.
     *
     * @param lap     lap number
     * @param corner  corner number
     */
    public record Proof(int lap, int corner) {}
}
