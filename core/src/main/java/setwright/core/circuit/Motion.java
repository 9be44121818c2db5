package setwright.core.circuit;

import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * How the car moved, as far as laps and lines need it: speed and distance at every sample, rate of turn and position where
 * recorded.
 *
 * <p>Speed and rate of turn are carried across gaps in a straight line so that they can be integrated; {@link #known} says
 * where they were measured.
 */
final class Motion {
    /** Below this the rate of turn from lateral acceleration and the course from positions are noise, m/s. */
    static final double CRAWL_MPS = 5.0;

    private final Recording recording;
    private final double[] speed;
    private final boolean[] known;
    private final double[] distance;
    private final Optional<double[]> turnRate;
    private final Optional<Track> track;

    private Motion(Recording recording, double[] rawSpeed, Optional<Track> track) {
        this.recording = recording;
        this.track = track;
        this.known = new boolean[rawSpeed.length];
        for (int i = 0; i < rawSpeed.length; i++) {
            known[i] = !Double.isNaN(rawSpeed[i]);
        }
        this.speed = Gaps.bridged(rawSpeed);
        this.distance = new double[speed.length];
        for (int i = 1; i < speed.length; i++) {
            distance[i] = distance[i - 1] + 0.5 * Math.max(0.0, speed[i - 1] + speed[i]) * recording.stepS();
        }
        this.turnRate = turnRateOf(recording, speed);
    }

    /**
     * Reads a recording.
     *
     * @throws MissingQuantity when there is neither a speed nor a position
     */
    static Motion of(Recording recording) {
        Optional<Track> track = Track.of(recording);
        if (recording.has(Quantity.SPEED)) {
            return new Motion(recording, recording.channel(Quantity.SPEED).toArray(), track);
        }
        Optional<double[]> wheels = wheelSpeed(recording);
        if (wheels.isPresent()) {
            return new Motion(recording, wheels.get(), track);
        }
        if (track.isPresent()) {
            return new Motion(recording, track.get().speed(), track);
        }
        throw new MissingQuantity("recording '" + recording.name() + "' has neither speed, wheel speeds nor position;"
                + " laps cannot be told apart. Name the speed column in the channel map.");
    }

    /** Returns this motion with its positions given in another plane. */
    Motion with(Track moved) {
        double[] measured = speed.clone();
        for (int i = 0; i < measured.length; i++) {
            measured[i] = known[i] ? speed[i] : Double.NaN;
        }
        return new Motion(recording, measured, Optional.of(moved));
    }

    private static Optional<double[]> wheelSpeed(Recording recording) {
        // Undriven or not, the middle of four wheels is near the car's speed unless two lock or spin at once.
        double[][] wheels = new double[4][];
        int found = 0;
        for (Quantity quantity : new Quantity[] {
            Quantity.WHEEL_SPEED_FRONT_LEFT,
            Quantity.WHEEL_SPEED_FRONT_RIGHT,
            Quantity.WHEEL_SPEED_REAR_LEFT,
            Quantity.WHEEL_SPEED_REAR_RIGHT
        }) {
            if (recording.has(quantity)) {
                wheels[found++] = recording.channel(quantity).toArray();
            }
        }
        if (found == 0) {
            return Optional.empty();
        }
        double[] middle = new double[recording.sampleCount()];
        double[] here = new double[found];
        for (int i = 0; i < middle.length; i++) {
            for (int w = 0; w < found; w++) {
                here[w] = wheels[w][i];
            }
            middle[i] = Robust.median(here);
        }
        return Optional.of(middle);
    }

    private static Optional<double[]> turnRateOf(Recording recording, double[] speed) {
        if (recording.has(Quantity.YAW_RATE)) {
            return Optional.of(Gaps.bridged(recording.channel(Quantity.YAW_RATE).toArray()));
        }
        if (!recording.has(Quantity.LATERAL_ACCELERATION)) {
            return Optional.empty();
        }
        double[] rate =
                Gaps.bridged(recording.channel(Quantity.LATERAL_ACCELERATION).toArray());
        for (int i = 0; i < rate.length; i++) {
            rate[i] = speed[i] < CRAWL_MPS ? 0.0 : rate[i] / speed[i];
        }
        return Optional.of(rate);
    }

    Recording recording() {
        return recording;
    }

    int size() {
        return speed.length;
    }

    double rateHz() {
        return recording.sampleRateHz();
    }

    double stepS() {
        return recording.stepS();
    }

    /** Speed at a sample, m/s, bridged over gaps. */
    double speed(int sample) {
        return speed[sample];
    }

    /** Speed between samples, m/s. */
    double speedAt(double sample) {
        return Gaps.between(speed, sample);
    }

    /** Tells whether speed was measured at the sample. */
    boolean known(int sample) {
        return known[sample];
    }

    /** Distance travelled since the first sample, m, by integrated speed. */
    double distance(int sample) {
        return distance[sample];
    }

    /** Distance travelled at a place between samples, m; carried on at the end's speed outside the recording. */
    double distanceAt(double sample) {
        int last = size() - 1;
        if (sample > last) {
            return distance[last] + (sample - last) * stepS() * speed[last];
        }
        if (sample < 0.0) {
            return sample * stepS() * speed[0];
        }
        return Gaps.between(distance, sample);
    }

    /** Place between samples at which a distance is reached. */
    double sampleAt(double distanceM) {
        int low = 0;
        int high = size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (distance[middle] <= distanceM) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double span = distance[high] - distance[low];
        return span > 0.0 ? low + (distanceM - distance[low]) / span : low;
    }

    /** Rate of turn, rad/s, left positive, from yaw rate or else lateral acceleration; empty when neither is there. */
    Optional<double[]> turnRate() {
        return turnRate;
    }

    /** The position, when recorded. */
    Optional<Track> track() {
        return track;
    }
}
