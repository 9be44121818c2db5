package setwright.app.diagnose;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/** Lays a run elsewhere: the same shape at another place, turned, or seen in a mirror. */
final class Moves {
    private Moves() {}

    /**
     * Moves positions on a plane.
     *
     * @param turnRad  to the left
     * @param mirror   whether left and right are exchanged first
     */
    static PackagedRun onPlane(PackagedRun run, double turnRad, double eastM, double northM, boolean mirror) {
        double[] x = run.get(Quantity.POSITION_X);
        double[] y = run.get(Quantity.POSITION_Y);
        double[] movedX = new double[x.length];
        double[] movedY = new double[x.length];
        double cosine = Math.cos(turnRad);
        double sine = Math.sin(turnRad);
        for (int i = 0; i < x.length; i++) {
            double side = mirror ? -x[i] : x[i];
            movedX[i] = cosine * side - sine * y[i] + eastM;
            movedY[i] = sine * side + cosine * y[i] + northM;
        }
        PackagedRun moved = run.with(Quantity.POSITION_X, movedX).with(Quantity.POSITION_Y, movedY);
        return mirror ? moved.mirroredSides() : moved;
    }

    /** Returns the middle of a run on the earth: latitude and longitude, degrees. */
    static double[] middle(PackagedRun run) {
        return new double[] {Robust.median(run.get(Quantity.LATITUDE)), Robust.median(run.get(Quantity.LONGITUDE))};
    }

    /**
     * Moves a run on the earth so that each sample keeps its distance from the middle and its azimuth but for a turn.
     *
     * <p><b>Source:</b> direct and inverse geodesic problems on WGS 84 by the library of C. F. F. Karney.
     *
     * @param middle   where its middle goes: latitude and longitude, degrees
     * @param turnDeg  to the right, degrees
     * @param mirror   whether left and right are exchanged first
     */
    static PackagedRun onEarth(PackagedRun run, double[] middle, double turnDeg, boolean mirror) {
        double[] latitude = run.get(Quantity.LATITUDE);
        double[] longitude = run.get(Quantity.LONGITUDE);
        double[] from = middle(run);
        double[] movedLatitude = new double[latitude.length];
        double[] movedLongitude = new double[latitude.length];
        for (int i = 0; i < latitude.length; i++) {
            GeodesicData line = Geodesic.WGS84.Inverse(from[0], from[1], latitude[i], longitude[i]);
            double azimuth = (mirror ? -line.azi1 : line.azi1) + turnDeg;
            GeodesicData place = Geodesic.WGS84.Direct(middle[0], middle[1], azimuth, line.s12);
            movedLatitude[i] = place.lat2;
            movedLongitude[i] = place.lon2;
        }
        PackagedRun moved = run.with(Quantity.LATITUDE, movedLatitude).with(Quantity.LONGITUDE, movedLongitude);
        return mirror ? moved.mirroredSides() : moved;
    }
}
