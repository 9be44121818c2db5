package setwright.intake.track;

/**
 * What a receiver said of one moment; NaN where it said nothing.
 *
 * @param timeS         since the beginning of 1970, UTC, s; since midnight where no date was told
 * @param latitudeDeg   WGS 84, north positive
 * @param longitudeDeg  WGS 84, east positive
 * @param speedMps      over ground
 * @param altitudeM     above mean sea level
 */
record Fix(double timeS, double latitudeDeg, double longitudeDeg, double speedMps, double altitudeM) {
    /** Returns a moment of which nothing is known yet. */
    static Fix at(double timeS) {
        return new Fix(timeS, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /** Adds a place, unless it is known. */
    Fix in(double latitude, double longitude) {
        return Double.isNaN(latitudeDeg) ? new Fix(timeS, latitude, longitude, speedMps, altitudeM) : this;
    }

    /** Adds a speed, unless it is known. */
    Fix going(double speed) {
        return Double.isNaN(speedMps) ? new Fix(timeS, latitudeDeg, longitudeDeg, speed, altitudeM) : this;
    }

    /** Adds an altitude, unless it is known. */
    Fix above(double altitude) {
        return Double.isNaN(altitudeM) ? new Fix(timeS, latitudeDeg, longitudeDeg, speedMps, altitude) : this;
    }
}
