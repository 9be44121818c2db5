package setwright.intake.problem;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Something a user gave that cannot be used. Its message is one sentence or two: where, what was expected, what was found, and
 * what to do about it.
 */
public final class InputProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_VALUE = 60;

    private final String file;
    private final long row;
    private final String column;
    private final String value;
    private final String expected;
    private final String advice;

    private InputProblem(Builder parts) {
        super(parts.message());
        this.file = parts.file;
        this.row = parts.row;
        this.column = parts.column;
        this.value = parts.value;
        this.expected = parts.expected;
        this.advice = parts.advice;
    }

    /** Starts a problem in the file of this name (without folders). */
    public static Builder in(String file) {
        return new Builder(file);
    }

    /** Returns the name of the file. */
    public String file() {
        return file;
    }

    /** Returns the line of the file, counted from 1, when the trouble has one. */
    public OptionalLong row() {
        return row > 0 ? OptionalLong.of(row) : OptionalLong.empty();
    }

    /** Returns the column's header or the key, when the trouble has one. */
    public Optional<String> column() {
        return text(column);
    }

    /** Returns the offending value as found, when there is one. */
    public Optional<String> value() {
        return text(value);
    }

    /** Returns what was expected instead. */
    public String expected() {
        return expected;
    }

    /** Returns what to do. */
    public String advice() {
        return advice;
    }

    private static Optional<String> text(String held) {
        return held.isEmpty() ? Optional.empty() : Optional.of(held);
    }

    /** Collects where and what, then makes the exception. */
    public static final class Builder {
        private final String file;
        private long row;
        private String column = "";
        private String value = "";
        private String expected = "";
        private String found = "";
        private String advice = "";

        private Builder(String file) {
            this.file = file;
        }

        /** Names the line, counted from 1. */
        public Builder row(long line) {
            this.row = line;
            return this;
        }

        /** Names the column or key. */
        public Builder column(String name) {
            this.column = name;
            return this;
        }

        /** Quotes the offending value. */
        public Builder value(String text) {
            this.value = shorten(text);
            return this;
        }

        /** Says what should have been there; read after "expected". */
        public Builder expected(String what) {
            this.expected = what;
            return this;
        }

        /** Says what was there; read after "found". Left out, the value is quoted. */
        public Builder found(String what) {
            this.found = what;
            return this;
        }

        /** Says what to do, as a sentence. */
        public Builder advice(String sentence) {
            this.advice = sentence;
            return this;
        }

        /** Makes the exception. */
        public InputProblem problem() {
            return new InputProblem(this);
        }

        /** Makes the exception and keeps what caused it. */
        public InputProblem causedBy(Throwable cause) {
            InputProblem problem = new InputProblem(this);
            problem.initCause(cause);
            return problem;
        }

        private String message() {
            StringBuilder text = new StringBuilder(file);
            if (row > 0) {
                text.append(", line ").append(row);
            }
            if (!column.isEmpty()) {
                text.append(", '").append(column).append('\'');
            }
            text.append(": expected ").append(expected);
            String what = found.isEmpty() && !value.isEmpty() ? '"' + value + '"' : found;
            if (!what.isEmpty()) {
                text.append(", found ").append(what);
            }
            text.append('.');
            return clean(
                    advice.isEmpty()
                            ? text.toString()
                            : text.append(' ').append(advice.strip()).toString());
        }

        /** A name out of a damaged file must not break the one line that tells of it. */
        private static String clean(String text) {
            StringBuilder clean = new StringBuilder();
            text.codePoints().forEach(c -> clean.appendCodePoint(Character.isISOControl(c) ? 0xFFFD : c));
            return clean.toString();
        }

        private static String shorten(String text) {
            StringBuilder clean = new StringBuilder();
            text.codePoints()
                    .limit(LONGEST_VALUE)
                    .forEach(c -> clean.appendCodePoint(Character.isISOControl(c) ? 0xFFFD : c));
            return text.codePointCount(0, text.length()) > LONGEST_VALUE ? clean + "..." : clean.toString();
        }
    }
}
