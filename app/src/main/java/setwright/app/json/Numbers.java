package setwright.app.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import setwright.core.recording.Channel;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** How numbers and whole documents are written. */
final class Numbers {
    /** More decimals would claim more than laps can tell. */
    private static final int DECIMALS = 4;
    /** For quantities whose size is not known beforehand. */
    private static final int DIGITS = 6;

    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private Numbers() {}

    /** Returns a document, ending with a line break. */
    static String text(Object tree) {
        return MAPPER.writeValueAsString(tree) + "\n";
    }

    static OptionalDouble degrees(double rad) {
        return known(Math.toDegrees(rad));
    }

    static OptionalDouble known(double value) {
        return Double.isFinite(value)
                ? OptionalDouble.of(BigDecimal.valueOf(value)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .doubleValue())
                : OptionalDouble.empty();
    }

    /** Returns a number to six digits, whatever its size. */
    static OptionalDouble digits(double value) {
        return Double.isFinite(value)
                ? OptionalDouble.of(
                        new BigDecimal(value, new MathContext(DIGITS, RoundingMode.HALF_EVEN)).doubleValue())
                : OptionalDouble.empty();
    }

    /** Returns the samples of a channel times a factor; a gap is empty. */
    static List<OptionalDouble> samples(Channel channel, double factor) {
        return IntStream.range(0, channel.size())
                .mapToObj(i -> known(factor * channel.get(i)))
                .toList();
    }
}
