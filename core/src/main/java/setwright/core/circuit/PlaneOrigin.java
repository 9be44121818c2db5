package setwright.core.circuit;

import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Finds where on the earth the origin of a recording's plane lies, from positions given both ways. */
final class PlaneOrigin {
    /** Semi-major axis, m, and first eccentricity squared of WGS 84 (NGA.STND.0036). */
    private static final double AXIS_M = 6_378_137.0;

    private static final double ECCENTRICITY2 = 6.694_379_990_14e-3;
    /** Places used; more add nothing. */
    private static final int PLACES = 1000;

    private PlaneOrigin() {}

    /** Returns the origin, from a quadratic fit of latitude and longitude over the plane; empty without both. */
    static Optional<Circuit.Geographic> of(Recording recording) {
        if (!recording.has(Quantity.LATITUDE)
                || !recording.has(Quantity.LONGITUDE)
                || !recording.has(Quantity.POSITION_X)
                || !recording.has(Quantity.POSITION_Y)) {
            return Optional.empty();
        }
        double[] latitude = recording.channel(Quantity.LATITUDE).toArray();
        double[] longitude = recording.channel(Quantity.LONGITUDE).toArray();
        double[] x = recording.channel(Quantity.POSITION_X).toArray();
        double[] y = recording.channel(Quantity.POSITION_Y).toArray();
        double[][] normal = new double[6][8];
        int used = 0;
        double aboutLatitude = 0.0;
        double aboutLongitude = 0.0;
        for (int i = 0; i < x.length; i += Math.max(1, x.length / PLACES)) {
            if (Double.isNaN(latitude[i] + longitude[i] + x[i] + y[i])) {
                continue;
            }
            if (used == 0) {
                aboutLatitude = latitude[i];
                aboutLongitude = longitude[i];
            }
            used++;
            double u = x[i] / 1000.0;
            double v = y[i] / 1000.0;
            double[] row = {1.0, u, v, u * u, u * v, v * v, latitude[i] - aboutLatitude, longitude[i] - aboutLongitude};
            for (int p = 0; p < 6; p++) {
                for (int q = 0; q < 8; q++) {
                    normal[p][q] += row[p] * row[q];
                }
            }
        }
        if (used < 20) {
            return Optional.empty();
        }
        eliminate(normal);
        double originLatitude = aboutLatitude + normal[0][6] / normal[0][0];
        double originLongitude = aboutLongitude + normal[0][7] / normal[0][0];
        return Double.isFinite(originLatitude) && Double.isFinite(originLongitude)
                ? Optional.of(new Circuit.Geographic(originLatitude, originLongitude))
                : Optional.empty();
    }

    private static void eliminate(double[][] rows) {
        for (int i = 0; i < rows.length; i++) {
            for (int k = 0; k < rows.length; k++) {
                if (k != i) {
                    double share = rows[k][i] / rows[i][i];
                    for (int j = i; j < rows[k].length; j++) {
                        rows[k][j] -= share * rows[i][j];
                    }
                }
            }
        }
    }

    /**
     * Returns the move from a plane about one origin into a plane about another, both with x east and y north: a shift by the
     * radii of curvature of the ellipsoid and a turn by the convergence of the meridians. Good to a few centimetres within
     * some kilometres.
     */
    static RigidMove between(Circuit.Geographic from, Circuit.Geographic to) {
        double middle = 0.5 * (from.latitudeRad() + to.latitudeRad());
        double sine = Math.sin(middle);
        double squeeze = 1.0 - ECCENTRICITY2 * sine * sine;
        double meridian = AXIS_M * (1.0 - ECCENTRICITY2) / Math.pow(squeeze, 1.5);
        double prime = AXIS_M / Math.sqrt(squeeze);
        double east = Math.IEEEremainder(from.longitudeRad() - to.longitudeRad(), 2.0 * Math.PI);
        return RigidMove.of(
                east * sine, east * prime * Math.cos(middle), (from.latitudeRad() - to.latitudeRad()) * meridian);
    }
}
