package setwright.core.simulation.logger;

import java.util.Optional;
import setwright.core.recording.Quantity;

/**
 * What a logger keeps and how well.
 *
 * @param seed        of all chance in it; the same plan makes the same table of the same drive
 * @param rateHz      rows per second, 10 to 500
 * @param channels    what it keeps
 * @param place       in which form it keeps a position
 * @param satellites  how it gets a position
 * @param noiseScale  multiplies the typical noise of every channel; 0 for none
 * @param errors      constant errors
 * @param dropOuts    gaps
 * @param lag         one channel that comes late
 * @param layout      how it is written
 */
public record LoggerPlan(
        long seed,
        double rateHz,
        ChannelSet channels,
        Place place,
        Satellites satellites,
        double noiseScale,
        Errors errors,
        DropOuts dropOuts,
        Optional<Lag> lag,
        Layout layout) {

    public LoggerPlan {
        if (!(rateHz >= 10.0 && rateHz <= 500.0 && noiseScale >= 0.0)) {
            throw new IllegalArgumentException("a logger keeps 10 to 500 rows per second with noise from 0 on, got "
                    + rateHz + " Hz and " + noiseScale);
        }
    }

    /** Returns a plausible plan; the same seed gives the same one. */
    public static LoggerPlan random(long seed) {
        return RandomLoggerPlan.draw(seed);
    }

    /** Returns a good logger of the usual channels: no errors but typical noise. */
    public static LoggerPlan good(long seed, double rateHz) {
        return new LoggerPlan(
                seed,
                rateHz,
                ChannelSet.USUAL,
                Place.PLANE,
                Satellites.USUAL,
                1.0,
                Errors.NONE,
                DropOuts.NONE,
                Optional.empty(),
                Layout.USUAL);
    }

    /** Returns this plan with other chance. */
    public LoggerPlan withSeed(long otherSeed) {
        return new LoggerPlan(
                otherSeed, rateHz, channels, place, satellites, noiseScale, errors, dropOuts, lag, layout);
    }

    /** Returns this plan without noise. */
    public LoggerPlan quiet() {
        return new LoggerPlan(
                seed,
                rateHz,
                channels,
                place,
                new Satellites(satellites.rateHz(), 0.0, 0.0, satellites.turnedRad()),
                0.0,
                errors,
                dropOuts,
                lag,
                layout);
    }

    /** In which form a position is kept. */
    public enum Place {
        NONE,
        /** Coordinates in a plane, m. */
        PLANE,
        /** Latitude and longitude. */
        GLOBE
    }

    /**
     * How a position is got. Between its readings the logger draws straight lines.
     *
     * @param rateHz     readings per second
     * @param noiseM     standard deviation of a reading, m
     * @param driftM     standard deviation of an error that wanders over about a minute, m
     * @param turnedRad  from the circuit's plane to the map, rad
     */
    public record Satellites(double rateHz, double noiseM, double driftM, double turnedRad) {
        /** A receiver with correction (common practice: some decimetres, drifting by a metre at most). */
        public static final Satellites USUAL = new Satellites(20.0, 0.1, 0.3, 0.0);
    }

    /**
     * Constant errors.
     *
     * @param steeringZeroRad  what the steering sensor reads straight ahead, at the steering wheel, rad
     * @param yawBiasRadPerS   what the yaw-rate sensor reads at rest, rad/s
     * @param mountPitchRad    nose-up tilt of the accelerometer: it feels gravity along, rad
     * @param mountRollRad     left-side-up tilt of the accelerometer: it feels gravity across, rad
     * @param mountYawRad      by which it looks to the left, rad
     * @param speedScale       speed read over true speed
     */
    public record Errors(
            double steeringZeroRad,
            double yawBiasRadPerS,
            double mountPitchRad,
            double mountRollRad,
            double mountYawRad,
            double speedScale) {
        /** None. */
        public static final Errors NONE = new Errors(0.0, 0.0, 0.0, 0.0, 0.0, 1.0);
    }

    /**
     * Gaps: moments at which all measured channels, or one of them, have no value. Time, lap number and lap pulse go on.
     *
     * @param perMinute  how many, on average
     * @param longestS   duration of the longest, s
     */
    public record DropOuts(double perMinute, double longestS) {
        /** None. */
        public static final DropOuts NONE = new DropOuts(0.0, 0.0);
    }

    /**
     * A channel that comes late.
     *
     * @param quantity  which
     * @param seconds   how late, s
     */
    public record Lag(Quantity quantity, double seconds) {}

    /**
     * How a table is written.
     *
     * @param names         style of the headers
     * @param speed         unit of speeds
     * @param angle         unit of the steering angle
     * @param yawRate       unit of the yaw rate
     * @param acceleration  unit of accelerations
     * @param throttle      unit of the throttle
     * @param brake         unit of the brake
     * @param travel        unit of suspension travel
     * @param steerLeft     whether the steering angle is positive to the left
     * @param yawLeft       whether the yaw rate is positive to the left
     * @param acrossLeft    whether the lateral acceleration is positive to the left
     * @param coarse        whether one decimal less is kept of everything but counts and positions
     * @param shuffled      whether columns stand in no order
     */
    public record Layout(
            Headers.Style names,
            LoggedUnit speed,
            LoggedUnit angle,
            LoggedUnit yawRate,
            LoggedUnit acceleration,
            LoggedUnit throttle,
            LoggedUnit brake,
            LoggedUnit travel,
            boolean steerLeft,
            boolean yawLeft,
            boolean acrossLeft,
            boolean coarse,
            boolean shuffled) {
        /** Everyday units, left positive. */
        public static final Layout USUAL = new Layout(
                Headers.Style.WORDS,
                LoggedUnit.KILOMETRE_PER_HOUR,
                LoggedUnit.DEGREE,
                LoggedUnit.DEGREE_PER_SECOND,
                LoggedUnit.STANDARD_GRAVITY,
                LoggedUnit.PERCENT,
                LoggedUnit.BAR,
                LoggedUnit.MILLIMETRE,
                true,
                true,
                true,
                false,
                false);
    }
}
