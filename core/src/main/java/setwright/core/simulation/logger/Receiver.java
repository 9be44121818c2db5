package setwright.core.simulation.logger;

import java.util.random.RandomGenerator;
import setwright.core.simulation.driven.Signal;

/** A satellite receiver: readings at its own rate, each with noise and an error that wanders. */
final class Receiver {
    private static final double WANDERING_S = 60.0;
    /** A place on the open sea, where nothing can be mistaken for a real circuit, rad. */
    private static final double ORIGIN_LATITUDE = Math.toRadians(47.2);

    private static final double ORIGIN_LONGITUDE = Math.toRadians(-31.6);
    /** Semi-major axis, m, and first eccentricity squared of the ellipsoid (NGA, World Geodetic System 1984, table 3.1). */
    private static final double SEMI_MAJOR_M = 6378137.0;

    private static final double ECCENTRICITY_SQUARED = 0.00669437999014;

    private final double[] east;
    private final double[] north;

    Receiver(Sensed sensed, LoggerPlan plan, RandomGenerator random) {
        LoggerPlan.Satellites satellites = plan.satellites();
        double seconds = (sensed.rows() - 1) / plan.rateHz();
        int readings = (int) Math.ceil(seconds * satellites.rateHz()) + 2;
        double cos = Math.cos(satellites.turnedRad());
        double sin = Math.sin(satellites.turnedRad());
        double kept = Math.exp(-1.0 / (WANDERING_S * satellites.rateHz()));
        double fresh = Math.sqrt(1.0 - kept * kept) * satellites.driftM();
        double driftEast = satellites.driftM() * random.nextGaussian();
        double driftNorth = satellites.driftM() * random.nextGaussian();
        double[] e = new double[readings];
        double[] n = new double[readings];
        for (int i = 0; i < readings; i++) {
            double x = sensed.at(Signal.X, i / satellites.rateHz());
            double y = sensed.at(Signal.Y, i / satellites.rateHz());
            driftEast = kept * driftEast + fresh * random.nextGaussian();
            driftNorth = kept * driftNorth + fresh * random.nextGaussian();
            e[i] = cos * x - sin * y + driftEast + satellites.noiseM() * random.nextGaussian();
            n[i] = sin * x + cos * y + driftNorth + satellites.noiseM() * random.nextGaussian();
        }
        double perRow = satellites.rateHz() / plan.rateHz();
        this.east = drawn(e, perRow, sensed.rows());
        this.north = drawn(n, perRow, sensed.rows());
    }

    private static double[] drawn(double[] readings, double perRow, int rows) {
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            double position = row * perRow;
            int before = (int) Math.min(Math.floor(position), readings.length - 2.0);
            out[row] = readings[before] + (position - before) * (readings[before + 1] - readings[before]);
        }
        return out;
    }

    /** m. */
    double[] east() {
        return east;
    }

    /** m. */
    double[] north() {
        return north;
    }

    /** rad; by the meridian's radius of curvature, which over a circuit is right to a centimetre. */
    double[] latitude() {
        double w = 1.0 - ECCENTRICITY_SQUARED * Math.pow(Math.sin(ORIGIN_LATITUDE), 2);
        double meridian = SEMI_MAJOR_M * (1.0 - ECCENTRICITY_SQUARED) / Math.pow(w, 1.5);
        return scaled(north, 1.0 / meridian, ORIGIN_LATITUDE);
    }

    /** rad. */
    double[] longitude() {
        double w = 1.0 - ECCENTRICITY_SQUARED * Math.pow(Math.sin(ORIGIN_LATITUDE), 2);
        double normal = SEMI_MAJOR_M / Math.sqrt(w);
        return scaled(east, 1.0 / (normal * Math.cos(ORIGIN_LATITUDE)), ORIGIN_LONGITUDE);
    }

    private static double[] scaled(double[] values, double factor, double offset) {
        double[] out = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            out[i] = offset + factor * values[i];
        }
        return out;
    }
}
