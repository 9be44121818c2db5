package setwright.app.json;

import static setwright.app.json.Numbers.digits;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import setwright.app.carfit.CarFitAnswer;
import setwright.core.identification.FitEvidence;
import setwright.core.identification.FittedValue;
import setwright.core.recording.Channel;

/** Writes what laps told of a car as JSON of version 1. */
public final class CarFitJsonWriter {
    private static final int VERSION = 1;

    private CarFitJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(CarFitAnswer answer) {
        return Numbers.text(new CarFitJson(
                VERSION,
                answer.car().description(),
                answer.recordings(),
                answer.laps(),
                answer.fit().values().stream().map(CarFitJsonWriter::value).toList(),
                answer.fit().evidence().stream().map(CarFitJsonWriter::evidence).toList()));
    }

    private static CarFitJson.Value value(FittedValue value) {
        return new CarFitJson.Value(
                value.key(),
                value.words(),
                value.unit(),
                value.told(),
                estimate(value.assumed(), value.assumedLow(), value.assumedHigh()),
                estimate(value.value(), value.low(), value.high()),
                value.why());
    }

    private static CarFitJson.Estimate estimate(double value, double low, double high) {
        return new CarFitJson.Estimate(digits(value), digits(low), digits(high));
    }

    private static CarFitJson.Evidence evidence(FitEvidence evidence) {
        return new CarFitJson.Evidence(
                evidence.title(),
                evidence.xWords(),
                evidence.yWords(),
                evidence.series().stream()
                        .map(series -> new CarFitJson.Series(
                                series.words(), series.curve(), samples(series.x()), samples(series.y())))
                        .toList());
    }

    private static List<OptionalDouble> samples(Channel channel) {
        return IntStream.range(0, channel.size())
                .mapToObj(i -> digits(channel.get(i)))
                .toList();
    }
}
