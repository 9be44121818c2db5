package setwright.core.proposal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.replay.Pool;

/**
 * Why a change is not to be made.
 *
 * @param kind     what speaks against it
 * @param words    in a plain sentence without capital and full stop, with its figures
 * @param where    phase and class of corners that it harms; empty where it is not about one
 * @param figures  the same for programs
 */
public record Refusal(Kind kind, String words, Optional<Pool> where, List<Figure> figures) {
    public Refusal {
        figures = List.copyOf(figures);
    }

    static Refusal of(Kind kind, String words, Figure... figures) {
        return new Refusal(kind, words, Optional.empty(), List.of(figures));
    }

    static Refusal at(Pool where, Kind kind, String words, Figure... figures) {
        return new Refusal(kind, words, Optional.of(where), List.of(figures));
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** What speaks against a change. */
    public enum Kind {
        LOCKS("wheels lock"),
        TRAVEL("end of travel"),
        RIDE_FREQUENCY("ride frequency"),
        DAMPING("damping"),
        BRAKE_BALANCE("brake balance"),
        BUMP_STOPS("bump stops"),
        GROUND("ground"),
        NOT_SURE("not sure"),
        TOO_LITTLE("too little"),
        HARM("harm elsewhere"),
        SLOWER("slower"),
        SLOWER_AT_LIMIT("slower at the limit");

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
     * @param name   with its unit at the end, as in JSON
     * @param value  in that unit
     */
    public record Figure(String name, double value) {}
}
