package setwright.app.story;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.DoubleStream;
import setwright.app.carfit.CarFitAnswer;
import setwright.app.units.Figures;
import setwright.core.identification.FittedValue;

/**
 * What laps told of a car, in words.
 *
 * @param figures  as people read them
 */
public record CarFitWords(Figures figures) {
    /** Digits of a quantity that is known to a few per cent at best. */
    private static final int DIGITS = 3;

    /** Returns the answer in one sentence. */
    public String headline(CarFitAnswer answer) {
        List<String> told = answer.values(true).stream().map(FittedValue::words).toList();
        int all = answer.fit().values().size();
        if (told.isEmpty()) {
            return "These laps tell nothing of the car beyond its sheet.";
        }
        return "These laps tell " + told.size() + " of " + all + " quantities better than the sheet: "
                + Figures.words(told) + ".";
    }

    /** Returns what was read. */
    public String source(CarFitAnswer answer) {
        return Figures.words(answer.recordings()) + ", " + answer.car().description() + ", " + answer.laps() + " laps";
    }

    /** Returns the value before the laps. */
    public String before(FittedValue value) {
        return number(value.assumed(), scale(value));
    }

    /** Returns the range before the laps. */
    public String beforeRange(FittedValue value) {
        return range(value.assumedLow(), value.assumedHigh(), scale(value));
    }

    /** Returns the value after the laps. */
    public String after(FittedValue value) {
        return number(value.value(), scale(value));
    }

    /** Returns the range after the laps. */
    public String afterRange(FittedValue value) {
        return range(value.low(), value.high(), scale(value));
    }

    /** Returns what told it, or what would. */
    public String why(FittedValue value) {
        return Figures.capital(value.words()) + ": " + Figures.sentence(value.why());
    }

    private String range(double low, double high, int scale) {
        return number(low, scale) + " to " + number(high, scale);
    }

    /** All figures of a quantity have the same decimals: three digits for the largest of them. */
    private static int scale(FittedValue value) {
        double largest = DoubleStream.of(
                        value.assumed(),
                        value.assumedLow(),
                        value.assumedHigh(),
                        value.value(),
                        value.low(),
                        value.high())
                .map(Math::abs)
                .filter(size -> size > 0.0 && Double.isFinite(size))
                .max()
                .orElse(1.0);
        return DIGITS - 1 - (int) Math.floor(Math.log10(largest));
    }

    private String number(double value, int scale) {
        if (!Double.isFinite(value)) {
            return Figures.UNKNOWN;
        }
        double rounded = BigDecimal.valueOf(value)
                .setScale(scale, RoundingMode.HALF_EVEN)
                .doubleValue();
        return figures.number(rounded, Math.max(0, scale));
    }
}
