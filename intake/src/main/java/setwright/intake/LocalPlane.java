package setwright.intake;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import setwright.core.numerics.Robust;

/**
 * Latitude and longitude on a plane that touches the ellipsoid at the middle of the recording: distance and azimuth from there,
 * as east and north in metres.
 *
 * <p><b>Source:</b> azimuthal equidistant projection on WGS 84 by C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy
 * 87 (2013) 43-55. Over the few kilometres of a circuit scale is true to better than 1e-6.
 */
final class LocalPlane {
    private final double[] eastM;
    private final double[] northM;

    private LocalPlane(double[] eastM, double[] northM) {
        this.eastM = eastM;
        this.northM = northM;
    }

    double[] eastM() {
        return eastM;
    }

    double[] northM() {
        return northM;
    }

    static LocalPlane of(double[] latitudeRad, double[] longitudeRad) {
        double latitude = Math.toDegrees(Robust.median(latitudeRad));
        double longitude = Math.toDegrees(Robust.median(longitudeRad));
        double[] east = new double[latitudeRad.length];
        double[] north = new double[latitudeRad.length];
        for (int i = 0; i < east.length; i++) {
            double lat = Math.toDegrees(latitudeRad[i]);
            double lon = Math.toDegrees(longitudeRad[i]);
            if (Double.isNaN(lat) || Double.isNaN(lon)) {
                east[i] = Double.NaN;
                north[i] = Double.NaN;
                continue;
            }
            GeodesicData line =
                    Geodesic.WGS84.Inverse(latitude, longitude, lat, lon, GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
            double azimuth = Math.toRadians(line.azi1);
            east[i] = line.s12 * Math.sin(azimuth);
            north[i] = line.s12 * Math.cos(azimuth);
        }
        return new LocalPlane(east, north);
    }
}
