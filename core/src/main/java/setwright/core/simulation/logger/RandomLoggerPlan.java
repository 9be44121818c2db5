package setwright.core.simulation.logger;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import setwright.core.recording.Quantity;
import setwright.core.simulation.logger.LoggerPlan.DropOuts;
import setwright.core.simulation.logger.LoggerPlan.Errors;
import setwright.core.simulation.logger.LoggerPlan.Lag;
import setwright.core.simulation.logger.LoggerPlan.Layout;
import setwright.core.simulation.logger.LoggerPlan.Place;
import setwright.core.simulation.logger.LoggerPlan.Satellites;

/** Draws loggers as they are found in cars; how often which error occurs is common practice. */
final class RandomLoggerPlan {
    private static final List<Double> RATES = List.of(20.0, 25.0, 50.0, 50.0, 60.0, 100.0, 100.0, 125.0, 200.0, 250.0);
    private static final List<Double> SATELLITE_RATES = List.of(10.0, 20.0, 25.0);

    private final Random random;

    private RandomLoggerPlan(Random random) {
        this.random = random;
    }

    static LoggerPlan draw(long seed) {
        return new RandomLoggerPlan(new Random(seed)).plan(seed);
    }

    private LoggerPlan plan(long seed) {
        double draw = random.nextDouble();
        ChannelSet channels = draw < 0.15 ? ChannelSet.MINIMAL : draw < 0.7 ? ChannelSet.USUAL : ChannelSet.FULL;
        Place place = channels == ChannelSet.MINIMAL ? Place.NONE : one(List.of(Place.PLANE, Place.GLOBE, Place.NONE));
        return new LoggerPlan(
                seed,
                one(RATES),
                channels,
                place,
                new Satellites(
                        one(SATELLITE_RATES),
                        random.nextDouble(0.05, 0.25),
                        random.nextDouble(0.1, 0.6),
                        random.nextDouble(0.0, 2.0 * Math.PI)),
                random.nextDouble(0.5, 1.6),
                errors(),
                chance(0.3) ? new DropOuts(random.nextDouble(0.3, 2.0), random.nextDouble(0.05, 0.3)) : DropOuts.NONE,
                chance(0.2)
                        ? Optional.of(new Lag(
                                one(List.of(Quantity.STEERING_WHEEL_ANGLE, Quantity.YAW_RATE, Quantity.SPEED)),
                                random.nextDouble(0.02, 0.08)))
                        : Optional.empty(),
                layout());
    }

    private Errors errors() {
        return new Errors(
                chance(0.5) ? Math.toRadians(3.0) * random.nextGaussian() : 0.0,
                chance(0.5) ? Math.toRadians(0.5) * random.nextGaussian() : 0.0,
                chance(0.4) ? Math.toRadians(0.8) * random.nextGaussian() : 0.0,
                chance(0.4) ? Math.toRadians(0.8) * random.nextGaussian() : 0.0,
                chance(0.3) ? Math.toRadians(0.8) * random.nextGaussian() : 0.0,
                chance(0.3) ? 1.0 + 0.01 * random.nextGaussian() : 1.0);
    }

    private Layout layout() {
        return new Layout(
                one(List.of(Headers.Style.values())),
                one(List.of(
                        LoggedUnit.KILOMETRE_PER_HOUR,
                        LoggedUnit.KILOMETRE_PER_HOUR,
                        LoggedUnit.METRE_PER_SECOND,
                        LoggedUnit.MILE_PER_HOUR)),
                one(List.of(LoggedUnit.DEGREE, LoggedUnit.DEGREE, LoggedUnit.RADIAN)),
                one(List.of(LoggedUnit.DEGREE_PER_SECOND, LoggedUnit.RADIAN_PER_SECOND)),
                one(List.of(LoggedUnit.STANDARD_GRAVITY, LoggedUnit.METRE_PER_SECOND_SQUARED)),
                one(List.of(LoggedUnit.PERCENT, LoggedUnit.SHARE)),
                one(List.of(LoggedUnit.BAR, LoggedUnit.BAR, LoggedUnit.PERCENT, LoggedUnit.SHARE)),
                one(List.of(LoggedUnit.MILLIMETRE, LoggedUnit.MILLIMETRE, LoggedUnit.METRE)),
                chance(0.6),
                chance(0.6),
                chance(0.6),
                chance(0.15),
                chance(0.6));
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    private <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
