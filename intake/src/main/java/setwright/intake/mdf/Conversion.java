package setwright.intake.mdf;

import java.util.Optional;

/**
 * How a raw number becomes a physical one.
 *
 * <p><b>Source:</b> ASAM MDF 4, CCBLOCK, the tables of conversion types.
 */
sealed interface Conversion
        permits Conversion.Same,
                Conversion.Linear,
                Conversion.Rational,
                KeyTable,
                RangeTable,
                ScaleTable,
                Conversion.Words,
                Conversion.Unread {
    /**
     * Converts a number.
     *
     * @return NaN when there is no number for it
     */
    double of(double raw);

    /** Returns the words that a number stands for, when it stands for words that are no number themselves. */
    default Optional<String> words(double raw) {
        return Optional.empty();
    }

    /** Returns why a channel with this conversion is left out; empty when it is not. */
    default Optional<String> reason() {
        return Optional.empty();
    }

    /** Type 0, 1:1. */
    record Same() implements Conversion {
        @Override
        public double of(double raw) {
            return raw;
        }
    }

    /**
     * Type 1: {@code factor * raw + offset}.
     *
     * @param offset  the standard's P1
     * @param factor  the standard's P2
     */
    record Linear(double offset, double factor) implements Conversion {
        @Override
        public double of(double raw) {
            return factor * raw + offset;
        }
    }

    /** Type 2: {@code (p1 raw^2 + p2 raw + p3) / (p4 raw^2 + p5 raw + p6)}. */
    record Rational(double p1, double p2, double p3, double p4, double p5, double p6) implements Conversion {
        @Override
        public double of(double raw) {
            double value = ((p1 * raw + p2) * raw + p3) / ((p4 * raw + p5) * raw + p6);
            return Double.isFinite(value) ? value : Double.NaN;
        }
    }

    /** One text for every number, as tables have it for some keys. */
    record Words(String text) implements Conversion {
        @Override
        public double of(double raw) {
            return Double.NaN;
        }

        @Override
        public Optional<String> words(double raw) {
            return text.isEmpty() ? Optional.empty() : Optional.of(text);
        }
    }

    /** One that is not evaluated. */
    record Unread(String why) implements Conversion {
        @Override
        public double of(double raw) {
            return Double.NaN;
        }

        @Override
        public Optional<String> reason() {
            return Optional.of(why);
        }
    }
}
