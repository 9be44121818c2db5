package setwright.core.simulation.logger;

import java.util.Random;

/**
 * What a logger records and how well.
 *
 * @param rateHz           rows per second, 20..250
 * @param channels         how much
 * @param position         how the place is told
 * @param noise            factor on the usual noise of every sensor, 0 for none
 * @param steeringZeroRad  angle of the steering wheel that reads as straight, rad
 * @param yawBias          added to the yaw rate, rad/s
 * @param forwardBias      added to the longitudinal acceleration, m/s²
 * @param lateralBias      added to the lateral acceleration, m/s²
 * @param speedScale       reading over true speed
 * @param dropOutsPerMin   gaps of a few tenths of a second in one minute
 * @param steerRight       whether steering counts to the right
 * @param yawRight         whether yaw rate counts to the right
 * @param lateralRight     whether lateral acceleration counts to the right
 * @param otherUnits       whether speed is in m/s, angles in rad, accelerations in m/s² and pedals from 0 to 1 instead of km/h, deg, g
 *                         and percent
 * @param seed             of the noise
 */
public record LoggerPlan(
        double rateHz,
        ChannelSet channels,
        PositionKind position,
        double noise,
        double steeringZeroRad,
        double yawBias,
        double forwardBias,
        double lateralBias,
        double speedScale,
        double dropOutsPerMin,
        boolean steerRight,
        boolean yawRight,
        boolean lateralRight,
        boolean otherUnits,
        long seed) {
    private static final double[] RATES = {50.0, 50.0, 100.0, 100.0, 200.0, 250.0};

    public LoggerPlan {
        if (!(rateHz >= 20.0 && rateHz <= 250.0)) {
            throw new IllegalArgumentException("a logger records 20 to 250 rows per second, got " + rateHz);
        }
        if (!(noise >= 0.0 && noise <= 10.0)) {
            throw new IllegalArgumentException("noise is 0 to 10 times the usual, got " + noise);
        }
    }

    /** Returns a logger in good order. */
    public static LoggerPlan usual(double rateHz, long seed) {
        return new LoggerPlan(
                rateHz,
                ChannelSet.FULL,
                PositionKind.EARTH,
                1.0,
                Math.toRadians(1.5),
                Math.toRadians(0.3),
                0.1,
                -0.1,
                1.0,
                0.0,
                false,
                false,
                false,
                false,
                seed);
    }

    /** Returns a plausible logger; the same seed gives the same one. */
    public static LoggerPlan random(long seed) {
        Random random = new Random(seed);
        ChannelSet[] sets = {ChannelSet.MINIMAL, ChannelSet.USUAL, ChannelSet.USUAL, ChannelSet.FULL, ChannelSet.FULL};
        PositionKind[] places = {PositionKind.NONE, PositionKind.PLANE, PositionKind.EARTH, PositionKind.EARTH};
        return new LoggerPlan(
                RATES[random.nextInt(RATES.length)],
                sets[random.nextInt(sets.length)],
                places[random.nextInt(places.length)],
                Math.exp(Math.log(2.0) * (2.0 * random.nextDouble() - 1.0)) * 0.9,
                Math.toRadians(3.0 * random.nextGaussian()),
                Math.toRadians(0.4 * random.nextGaussian()),
                0.15 * random.nextGaussian(),
                0.15 * random.nextGaussian(),
                1.0 + 0.004 * random.nextGaussian(),
                random.nextInt(3) == 0 ? 0.5 : 0.0,
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                seed + 1);
    }
}
